using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Cli.Output;

/// <summary>The shop that a command works with.</summary>
internal static class ShopFile
{
    /// <summary>What <c>--shop</c> is, for its help.</summary>
    public const string Help = "The shop's file; otherwise starting values ('ringwright new shop' writes them).";

    /// <summary>The shop in a file; without one, starting values.</summary>
    public static Shop Read(string? path, LengthUnit unit) => path is null ? Shop.StartingIn(unit) : DocumentFile.Read(path, DocumentJson.ReadShop);
}
