using Ringwright.Cli.Commands.Kept;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Cli.Output;

/// <summary>The shop that a command works with.</summary>
internal static class ShopFile
{
    /// <summary>What <c>--shop</c> is, for its help.</summary>
    public const string Help = "The shop's file; otherwise the shop in use in your data folder ('ringwright shops'), or starting values ('ringwright new shop' writes them).";

    /// <summary>The shop in a file; without one, the kept one; without any, starting values.</summary>
    public static Shop Read(string? path, KeptChoices kept, LengthUnit unit) => path is null ? kept.Shop ?? Shop.StartingIn(unit) : DocumentFile.Read(path, DocumentJson.ReadShop);
}
