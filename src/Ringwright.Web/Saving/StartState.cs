using Ringwright.Core.Documents;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Saving;

/// <summary>What the app starts with.</summary>
/// <param name="Sheet">The saved sheet, or the example.</param>
/// <param name="Unwritable">Why nothing will be saved; null when it will.</param>
/// <param name="Unread">What of the saved work could not be read; null when all was.</param>
internal sealed record StartState(Sheet Sheet, string? Unwritable, string? Unread)
{
    /// <summary>Opens the shelf and loads from it.</summary>
    public static StartState From(PieceShelf shelf, string examplePath)
    {
        string example = File.ReadAllText(examplePath);
        string? unwritable = shelf.Claim();
        string? unread = null;
        Sheet? saved = unwritable is null ? shelf.Load(out unread) : null;
        Sheet sheet = saved ?? Sheet.Of(DocumentJson.ReadPiece(example), shelf.CurrentShop()) with { Borrowed = true };
        return new(sheet with { ShopEntry = shelf.ShopInUse(sheet.Good.Shop) }, unwritable, unread);
    }
}
