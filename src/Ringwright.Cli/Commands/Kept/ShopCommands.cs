using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store;

namespace Ringwright.Cli.Commands.Kept;

/// <summary><c>ringwright shops …</c>: the shops that are kept, and which of them is in use.</summary>
internal static class ShopCommands
{
    public static void AddTo(KeptData data)
    {
        data.Describe("The shops in your data folder: list, take in, write out, and which is in use.");
        data.Add<RemovedSettings>(new("list", "The shops by name.", "shops list"), (store, s) => Answer.List(
            "shops", s.Removed ? "No shop was removed." : "No shops yet; 'ringwright shops take FILE' adds one.",
            s.Removed ? store.Shops.Removed() : store.Shops.List(),
            e => [e.Id.ToString(CultureInfo.InvariantCulture), e.Name, e.IsCurrent ? "in use" : "", KeptData.Day(e.Changed)],
            (json, e) =>
            {
                json.WriteNumber("number", e.Id);
                json.WriteString("name", e.Name);
                json.WriteBoolean("inUse", e.IsCurrent);
                json.WriteString("changed", e.Changed);
            }));
        data.Add<TakeSettings>(new("take", "Take a shop's file in; the first shop is in use at once.", "shops take examples/small-shop.json", "shops take my-shop.json"), Take);
        data.Add<WriteSettings>(new("write", "Write a shop to a file.", "shops write 1 shop.json"), (store, s) =>
        {
            SafeFile.Write(s.File, DocumentJson.Write(store.Shops.Read(s.Number)));
            return Answer.Of($"{s.File} written.");
        });
        data.Add<NumberSettings>(new("use", "Take a shop into use.", "shops use 2"), (store, s) =>
        {
            store.Shops.Use(s.Number);
            return Answer.Of($"Shop {s.Number} is in use.", s.Number);
        });
        data.AddRemoval("shop", (store, number) => store.Shops.Remove(number), (store, number) => store.Shops.PutBack(number));
    }

    private static Answer Take(DataStore store, TakeSettings settings)
    {
        Shop shop = DocumentFile.Read(settings.File, DocumentJson.ReadShop);
        if (settings.Into is not long number) number = store.Shops.Add(shop);
        else store.Shops.Save(number, shop);
        return Answer.Of($"Shop {number} is “{shop.Name}”.", number);
    }
}
