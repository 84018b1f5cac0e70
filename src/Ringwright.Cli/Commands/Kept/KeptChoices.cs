using Ringwright.Core.Pieces;
using Ringwright.Paper.Sheets;
using Ringwright.Store;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands.Kept;

/// <summary>What is kept in the user's data folder and holds where the command line says nothing else.</summary>
/// <param name="Shop">The shop in use; null when none is kept.</param>
/// <param name="Printing">How the user prints, by name.</param>
internal sealed record KeptChoices(Shop? Shop, IReadOnlyDictionary<string, string> Printing)
{
    /// <summary>Nothing is kept.</summary>
    public static KeptChoices None { get; } = new(null, new Dictionary<string, string>());

    /// <summary>What is kept; a folder without data stays as it is.</summary>
    public static KeptChoices Read() => !DataStore.IsIn(UserFolder.Usual()) ? None : KeptData.Read(store => new KeptChoices(
        store.Shops.Current() is ShopEntry shop ? store.Shops.Read(shop.Id) : null,
        store.Settings.All().Where(s => s.Key.StartsWith(PrintSettings.Prefix, StringComparison.Ordinal)).ToDictionary()));

    /// <summary>How the user prints: the kept value of a name; null when it is as usual.</summary>
    public string? Print(string name) => Printing.TryGetValue(PrintSettings.Prefix + name, out string? value) && !string.IsNullOrWhiteSpace(value) ? value.Trim() : null;
}

/// <summary>Options of a command that is made in a shop.</summary>
internal interface ITakesShop
{
    /// <summary>The shop's file, if one is named.</summary>
    string? Shop { get; }

    /// <summary>What is kept, for where nothing is named.</summary>
    KeptChoices AtHand { set; }
}

/// <summary>Hands what is kept to the commands that may use it, and says which shop that is.</summary>
/// <param name="notes">Where it is said: beside the answer, which may be JSON for a program.</param>
internal sealed class KeptInterceptor(TextWriter notes) : ICommandInterceptor
{
    /// <inheritdoc/>
    public void Intercept(CommandContext context, CommandSettings settings)
    {
        if (settings is not ITakesShop taking || (taking.Shop is not null && settings is not PaperSettings)) return;
        var kept = KeptChoices.Read();
        taking.AtHand = kept;
        if (taking.Shop is null && kept.Shop is Shop shop) notes.WriteLine($"Shop: “{shop.Name}”, the one in use in your data folder; --shop names another.");
        if (settings is PaperSettings paper && paper.FromKept(kept) is { Length: > 0 } printing) notes.WriteLine($"Printed as your settings say: {printing}.");
    }
}
