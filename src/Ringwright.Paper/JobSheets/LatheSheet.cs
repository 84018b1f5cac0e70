using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Pictures.Lathe;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheets beside the lathe: the work cut through, the numbers large, the wall after each pass, the order of work and the cautions.</summary>
internal static class LatheSheet
{
    private const string Name = "At the lathe", OrderName = "At the lathe: order of work";
    private const double Headings = 18; // heading above, caption and air below the picture, mm
    private const double LeastPicture = 80, MostPicture = 165;

    // What is read while standing at the lathe; the rest is in the table or on the first sheet.
    private static readonly (string Figure, string Caption)[] Large =
    [
        ("speed-blank", "Blank, no faster than"), ("speed-round", "Round, no faster than"), ("centre-within", "Centre within"), ("holding", "Holding Ø"), ("holding-length", "Holding, long or deep"),
        ("bore", "Bore"), ("bore-drill", "Drill first"), ("bore-depth", "Stop the shoulder at"), ("wall-roughed", "Wall, roughed"), ("wall-finished", "Wall, finished"), ("tool-shank", "Tool's shank, at least"),
    ];

    public static void Add(Packet packet, Plan plan, LathePlan lathe, MeasureStyle style)
    {
        Box free = packet.FreeArea;
        Section figures = new("To set and to reach", new KeyFigures(style.Unit == LengthUnit.Millimetre ? 4 : 3, [.. Figures(lathe, style)]));
        double tall = Math.Clamp(free.Height - figures.HeightAt(free.Width) - Sheet.Gap - Headings, LeastPicture, MostPicture);
        ScaledPicture picture = LathePicture.Draw(plan, lathe, style, new(free.Width, tall));
        packet.Flow(Name, picture.Scale.ToString(),
        [
            new Section($"Cut along the axis, {picture.Scale}", new Picture(picture.Drawing, Caption)),
            figures,
            .. Walls(lathe, style),
        ]);
        packet.Flow(OrderName, "–",
        [
            new Section("In this order", new ListBlock(ListMark.Number, [.. lathe.Steps.Select(s => s.In(style))], RingJob.Words)),
            .. lathe.Doubts.IsEmpty ? Array.Empty<IBlock>() : [new Section("Mend first", new ListBlock(ListMark.Dot, [.. lathe.Doubts.Select(d => d.Sentence.In(style))], RingJob.Words))],
            new Section("Take care", new ListBlock(ListMark.Caution, Cautions.ForLathe)),
        ]);
    }

    /// <summary>What the picture shows.</summary>
    internal const string Caption = "Left: roughed. Right: finished. Dashed: as glued, through the middle of the segments, and the first hole.";

    private static IEnumerable<KeyFigure> Figures(LathePlan lathe, MeasureStyle style) =>
        from shown in Large
        let figure = lathe.Find(shown.Figure)
        where figure is not null
        select Reading.Of(shown.Caption, figure, style);

    private static IEnumerable<IBlock> Walls(LathePlan lathe, MeasureStyle style) =>
        SheetTables.Under("Thinnest wall after each pass, from the rim down", lathe.Rings.Reverse().Select(r => Row(r, style)), Table);

    private static Table Table(string[][] rows) => new(
        [new("Ring"), new("As glued", ColumnKind.Numbers), new("Outside roughed", ColumnKind.Numbers), new("Inside roughed", ColumnKind.Numbers), new("Finished", ColumnKind.Numbers), new("Centre within", ColumnKind.Numbers)],
        rows);

    private static string[] Row(RingPasses ring, MeasureStyle style) =>
    [
        Shortened.To(ring.Ring.Plan.Ring.Name, s => Typesetter.WidthOf(s, TypeScale.Number) <= 40),
        .. Enum.GetValues<LathePass>().Select(p => ring[p]).Select(r => r.Inner > 0 ? Caliper.Short(style, r.Thickness) : $"Ø {Caliper.Short(style, 2 * r.Outer)}"),
        Caliper.Short(style, Math.Max(0, ring.CentreWithin)),
    ];
}
