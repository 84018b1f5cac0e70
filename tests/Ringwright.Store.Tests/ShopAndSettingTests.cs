using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;

namespace Ringwright.Store.Tests;

public sealed class ShopAndSettingTests : IDisposable
{
    private readonly Desk _desk = new();
    private readonly DataStore _store;

    public ShopAndSettingTests() => _store = _desk.Open();

    public void Dispose()
    {
        _store.Dispose();
        _desk.Dispose();
    }

    [Fact]
    public void The_first_shop_is_in_use_and_another_can_be_taken()
    {
        Assert.Null(_store.Shops.Current());
        Shop small = DocumentJson.ReadShop(Desk.Text("small-shop"));
        long first = _store.Shops.Add(small), second = _store.Shops.Add(Shop.Starting);
        Assert.Equal(first, _store.Shops.Current()!.Id);
        _store.Shops.Use(second);
        Assert.Equal(second, _store.Shops.Current()!.Id);
        Assert.Equal(DocumentJson.Write(small), DocumentJson.Write(_store.Shops.Read(first)));
    }

    [Fact]
    public void A_shop_is_saved_removed_and_put_back()
    {
        long first = _store.Shops.Add(Shop.Starting), second = _store.Shops.Add(Shop.Starting with { Name = "Club" });
        _store.Shops.Save(second, Shop.Starting with { Name = "Club shop" });
        Assert.Throws<BadInputException>(() => _store.Shops.Remove(first));
        _store.Shops.Remove(second);
        Assert.Equal([first], _store.Shops.List().Select(s => s.Id));
        Assert.Throws<BadInputException>(() => _store.Shops.Use(second));
        _store.Shops.PutBack(second);
        Assert.Equal("Club shop", _store.Shops.Read(second).Name);
        Assert.Throws<BadInputException>(() => _store.Shops.Save(9, Shop.Starting));
    }

    [Fact]
    public void Settings_are_kept_changed_and_forgotten()
    {
        _store.Settings["units"] = "in";
        _store.Settings["paper"] = "letter";
        _store.Settings["units"] = "mm";
        using (DataStore again = _desk.Open()) Assert.Equal("mm", again.Settings["units"]);
        _store.Settings["paper"] = null;
        Assert.Null(_store.Settings["paper"]);
        Assert.Equal([new("units", "mm")], _store.Settings.All());
    }
}
