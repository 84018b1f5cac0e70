using Ringwright.Core.Pieces;

namespace Ringwright.Core.Boards;

/// <summary>How boards become strips in this shop. Lengths in mm.</summary>
public sealed record BoardRules
{
    /// <summary>Wood that planing a rough board flat and to thickness takes at least, both faces together. A rule of our own, no source.</summary>
    public const double UsualMilling = 2;

    /// <summary>A board that is as thick as wanted to within this is taken as planed to it already.</summary>
    public const double MilledAlready = 0.1;

    /// <summary>Width of the cut.</summary>
    public required double Kerf { get; init; }

    /// <summary>Wood lost to square the end of a strip.</summary>
    public required double EndTrim { get; init; }

    /// <summary>Shortest rest of a strip that can be held.</summary>
    public required double HoldingLength { get; init; }

    /// <summary>Wood that planing a rough board takes, both faces together.</summary>
    public double Milling { get; init; } = UsualMilling;

    /// <summary>Wood taken off one edge of a board to make it straight before the first strip is ripped. A rule of our own, no source.</summary>
    public double EdgeTrim { get; init; } = 2;

    /// <summary>A strip or offcut shorter than this does not go back to the rack. A rule of our own, no source.</summary>
    public double LeastLength { get; init; } = 150;

    /// <summary>The same for its width.</summary>
    public double LeastWidth { get; init; } = 20;

    /// <summary>Moisture of the wood when it is glued, percent; null when the shop does not say.</summary>
    public double? Moisture { get; init; }

    /// <summary>Strip that every strip loses whatever it yields: trim and the rest to hold.</summary>
    public double StripLoss => EndTrim + HoldingLength;

    /// <summary>The rules that follow from a shop.</summary>
    public static BoardRules Of(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return new() { Kerf = shop.Saw.Kerf.Millimetres, EndTrim = shop.Saw.EndTrim.Millimetres, HoldingLength = shop.Saw.HoldingLength.Millimetres, Moisture = shop.Climate.WoodMoisture, Milling = shop.Milling.ThicknessAllowance.Millimetres };
    }

    /// <summary>Whether a strip of <paramref name="wanted"/> mm can be planed out of a board of <paramref name="thickness"/> mm.</summary>
    public bool CanMill(double thickness, double wanted) => thickness >= wanted + Milling - 1e-9 || Math.Abs(thickness - wanted) <= MilledAlready;

    /// <summary>How many strips of <paramref name="width"/> mm a board of <paramref name="board"/> mm gives: after the last no kerf is charged.</summary>
    public int StripsAcross(double board, double width) => Math.Max(0, (int)Math.Floor((Across(board) + 1e-9) / (width + Kerf)));

    /// <summary>Width that strips can take of a board, when each is charged its width and a kerf.</summary>
    public double Across(double board) => board - EdgeTrim + Kerf;
}
