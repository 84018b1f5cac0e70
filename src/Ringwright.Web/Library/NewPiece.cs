using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Library;

/// <summary>A way to begin a piece.</summary>
/// <param name="Label">Its name for people.</param>
/// <param name="Start">Kind and usual sizes; null for a disc or ring that says its own.</param>
/// <param name="Mark">Its silhouette, on 64 by 48.</param>
internal sealed record NewPiece(string Label, PieceStart? Start, string Mark)
{
    private const string DiscLabel = "Disc", RingLabel = "Ring";

    public static ImmutableArray<NewPiece> All { get; } =
    [
        new(DiscLabel, null, "M32 4a20 20 0 1 0 .01 0zM32 4V44M12 24H52M17.9 9.9L46.1 38.1M46.1 9.9L17.9 38.1"),
        new(RingLabel, null, "M32 4a20 20 0 1 0 .01 0zM32 13a11 11 0 1 0 .01 0zM32 4v9M32 35v9M12 24h9M43 24h9M17.9 9.9l6.4 6.4M39.7 31.7l6.4 6.4M46.1 9.9l-6.4 6.4M24.3 31.7l-6.4 6.4"),
        new("Bowl", Of(PieceKind.Bowl), "M8 12C10 28 20 36 24 40H40C44 36 54 28 56 12Z"),
        new("Vase", Of(PieceKind.Vase), "M24 4H40C36 10 46 16 46 26C46 36 40 40 38 44H26C24 40 18 36 18 26C18 16 28 10 24 4Z"),
        new("Platter", Of(PieceKind.Platter), "M4 20C12 30 20 30 22 32H42C44 30 52 30 60 20Z"),
        new("Box", Of(PieceKind.Box), "M14 18H50V42H14ZM13 10H51V18H13ZM29 10V6H35V10"),
        new("Spindle", Of(PieceKind.Spindle), "M27 4H37V9C34 11 34 14 38 18C42 24 38 30 36 34C34 38 38 40 38 44H26C26 40 30 38 28 34C26 30 22 24 26 18C30 14 30 11 27 9Z"),
        new("Pen barrel", Of(PieceKind.PenBarrel), "M6 20C22 16 42 16 58 20V28C42 32 22 32 6 28Z"),
    ];

    /// <summary>Its usual size in words.</summary>
    public string Words(MeasureStyle style) => Start is PieceStart s ? $"{Printed(style, s.Diameter)} × {Printed(style, s.Height)}"
        : Label == DiscLabel ? $"24 wedges, {Printed(style, UsualDisc)}" : $"12 segments, {Printed(style, UsualRing)}";

    /// <summary>A piece of it, in the sizes and woods that stand on the desk.</summary>
    /// <exception cref="BadInputException">A text cannot be read, or no piece of that size can be found.</exception>
    public Piece Make(Sheet sheet)
    {
        LengthUnit unit = sheet.Units.Unit();
        Length? diameter = sheet.Desk.Length("new.diameter", unit), height = sheet.Desk.Length("new.height", unit);
        ImmutableArray<string> woods = sheet.Desk.List("new.woods") is { IsEmpty: false } named ? named : ["maple", "padauk"];
        if (Start is PieceStart start) return start.Make(Label, unit, start.Request(diameter ?? start.Diameter, height ?? start.Height, woods), sheet.Good.Shop);
        return new()
        {
            Name = Label,
            Units = unit,
            Rings = [Label == DiscLabel
                ? new WedgeDisc { Name = "Disc", Segments = 24, Diameter = diameter ?? UsualDisc, Thickness = Mm(25), Woods = woods }
                : new SegmentRing { Name = "Ring", Segments = 12, Diameter = diameter ?? UsualRing, InnerDiameter = Mm(Math.Round(0.75 * (diameter ?? UsualRing).Millimetres, 1)), Thickness = Mm(18), Woods = woods }],
        };
    }

    private static Length UsualDisc { get; } = Mm(25);

    private static Length UsualRing { get; } = Mm(120);

    private static PieceStart Of(PieceKind kind) => PieceStart.All.First(s => s.Kind == kind);

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    private static string Printed(MeasureStyle style, Length length) => Drawing.Svg.Short(style.Length(length.Millimetres));
}
