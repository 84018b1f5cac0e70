using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands.Kept;

/// <summary><c>ringwright shops …</c>: the shops that are kept, and which of them is in use.</summary>
internal static class ShopCommands
{
    public static void AddTo(IConfigurator<CommandSettings> branch, KeptData data)
    {
        branch.SetDescription("The shops in your data folder: list, take in, write out, and which is in use.");
        data.Add<RemovedSettings>(branch, "list", "The shops by name.", (store, s) => Answer.List(
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
        data.Add<TakeSettings>(branch, "take", "Take a shop's file in; the first shop is in use at once.", Take);
        data.Add<WriteSettings>(branch, "write", "Write a shop to a file.", (store, s) =>
        {
            SafeFile.Write(s.File, DocumentJson.Write(store.Shops.Read(s.Number)));
            return Answer.Of($"{s.File} written.");
        });
        data.Add<NumberSettings>(branch, "use", "Take a shop into use.", (store, s) =>
        {
            store.Shops.Use(s.Number);
            return Answer.Of($"Shop {s.Number} is in use.", s.Number);
        });
        data.AddRemoval(branch, "shop", "shops", (store, number) => store.Shops.Remove(number), (store, number) => store.Shops.PutBack(number));
    }

    private static Answer Take(DataStore store, TakeSettings settings)
    {
        Shop shop = DocumentFile.Read(settings.File, DocumentJson.ReadShop);
        if (settings.Into is not long number) number = store.Shops.Add(shop);
        else store.Shops.Save(number, shop);
        return Answer.Of($"Shop {number} is “{shop.Name}”.", number);
    }
}
