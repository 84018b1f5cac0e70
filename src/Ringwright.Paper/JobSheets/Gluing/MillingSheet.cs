using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet at planer and rip fence: which thicknesses and widths for the whole piece, in which order, how exact.</summary>
internal static class MillingSheet
{
    private const string Name = "Milling";
    private const int MostNear = 6;       // nearly equal widths told; the cheapest
    private const double MostWords = 60;  // of the rings a setting is for, mm

    /// <summary>A single setting of each machine stands on the ring's own sheets already.</summary>
    public static bool IsFor(MillingPlan milling) => milling.Planer.Length > 1 || milling.Rip.Length > 1 || (milling.Plan.Rings.Length > 1 && milling.Strips.Length > 0);

    public static void Add(Packet packet, MillingPlan milling, MeasureStyle style)
    {
        string title = $"{Settings(milling.Planer.Length, "thickness", "thicknesses")} and {Settings(milling.Rip.Length, "width", "widths")} for all rings";
        IEnumerable<IBlock> exact = milling.Figures.IsEmpty ? [] : [new Section("How exact", new KeyFigures(style.Unit == LengthUnit.Millimetre ? 3 : 2, [.. milling.Figures.Select(f => Reading.Of(f.Label, f, style))]))];
        packet.Flow(Name, "–", [
            new Paragraph(title, TypeScale.Title),
            .. SheetTables.Under("Plane, from the thickest", milling.Planer.Select(p => Planer(p, style)), PlanerTable),
            .. SheetTables.Under("Rip, from the widest", milling.Rip.Select(r => Rip(r, style)), RipTable),
            .. exact,
            .. SheetTables.Under("Strips of each wood", milling.Strips.Select(s => Strip(s, style)), StripTable),
            .. Words("Widths that are nearly equal", milling.Near.OrderBy(n => n.Extra).Take(MostNear).Select(n => n.Sentence), style),
            .. Words("Mind", milling.Minds, style),
            new Section("In this order", new ListBlock(ListMark.Number, [.. milling.Steps().Select(s => s.In(style))], RingJob.Words)),
            new Section("Take care", new ListBlock(ListMark.Caution, Cautions.ForMilling)),
        ]);
    }

    private static IEnumerable<IBlock> Words(string heading, IEnumerable<Sentence> sentences, MeasureStyle style)
    {
        string[] words = [.. sentences.Select(s => s.In(style))];
        return words.Length == 0 ? [] : [new Section(heading, new ListBlock(ListMark.Dot, words, RingJob.Words))];
    }

    private static string Settings(int count, string one, string several) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : several)}");

    private static Table PlanerTable(string[][] rows) =>
        new([new("Plane to", ColumnKind.Numbers), new("From rough", ColumnKind.Numbers), new("Resaw into", ColumnKind.Numbers), new("Passes", ColumnKind.Numbers), new("Woods"), new("Done")], rows);

    private static string[] Planer(PlanerSetting setting, MeasureStyle style) =>
    [
        Caliper.Short(style, setting.Thickness), setting.Rough is double rough ? Caliper.Short(style, rough) : "–", setting.Slices > 1 ? Count(setting.Slices) : "–", setting.Rough is null ? "–" : Count(setting.Passes),
        Cut(setting.Strips.Select(s => s.Wood).Distinct(StringComparer.OrdinalIgnoreCase)), "",
    ];

    private static Table RipTable(string[][] rows) =>
        new([new("Width, trued", ColumnKind.Numbers), new("Rip first to", ColumnKind.Numbers), new("For rings"), new("Done")], rows);

    private static string[] Rip(RipSetting setting, MeasureStyle style) =>
        [Caliper.Short(style, setting.Width), Caliper.Short(style, setting.Rough), Cut(setting.Strips.SelectMany(s => s.Rings).Distinct()), ""];

    private static Table StripTable(string[][] rows) =>
        new([new("Wood"), new("For"), new("Thick", ColumnKind.Numbers), new("Wide", ColumnKind.Numbers), new("Long in all", ColumnKind.Numbers), new("Boards", ColumnKind.Numbers)], rows);

    private static string[] Strip(MillingStrip strip, MeasureStyle style) =>
    [
        Cut([strip.Wood]), MillingWords.Use(strip.Use), Caliper.Short(style, strip.Thickness), strip.Width is double width ? Caliper.Short(style, width) : "–", Caliper.Short(style, strip.Length), Count(strip.Boards),
    ];

    private static string Cut(IEnumerable<string> names) => Shortened.To(string.Join(", ", names), s => Typesetter.WidthOf(s, TypeScale.Number) <= MostWords);

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
