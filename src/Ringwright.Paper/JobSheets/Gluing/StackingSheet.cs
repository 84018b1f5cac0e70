using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Pictures.Gluing;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The stacking chart: the rings from the side, where each is turned to, how it is centred, in the order they go on.</summary>
internal static class StackingSheet
{
    private const string Name = "Stacking";
    private const double MostWords = 26;  // of a ring's name, mm
    private const double Tall = 95;       // of the pictures, mm

    public static void Add(Packet packet, GluePlan glue, MeasureStyle style)
    {
        double width = (packet.FreeArea.Width - Columns.Gutter) / 2, size = Math.Min(width, Tall);
        ScaledPicture side = StackingPicture.Side(glue, new(width, Tall));
        Sentence[] steps = [.. glue.StackSteps()];
        packet.Flow(Name, side.Scale.ToString(), [
            new Column(3, new Paragraph("Stacking the rings", TypeScale.Title), new Paragraph(steps[0].In(style), RingJob.Words)),
            new Columns(
                new Section($"From the side, {side.Scale}", new Picture(side.Drawing, "Numbers as on the chart. A heavy line: the joint that is left open to the last.")),
                new Section("Marks from above", new Picture(StackingPicture.Marks(glue, size), "The lowest ring innermost; a dot where joint 1 of each ring lies. Joint 1 is between the pieces 1 and 2; after means counter-clockwise."))),
            .. SheetTables.Under("In this order", glue.Stack.Select((s, i) => Row(glue, s, i, style)), Table),
            new Section("How", new ListBlock(ListMark.Dot, [.. steps.Skip(1).Select(s => s.In(style))], RingJob.Words)),
        ]);
    }

    private static Table Table(string[][] rows) => new(
        [new("", ColumnKind.Numbers), new("Lay"), new("On", ColumnKind.Numbers), new("Turned by", ColumnKind.Numbers), new("Joint 1 goes"), new("Centre it on"), new("Done")],
        rows);

    private static string[] Row(GluePlan glue, StackJoint joint, int index, MeasureStyle style)
    {
        (int laid, int on) = joint.FromTop ? (joint.Lower, joint.Upper) : (joint.Upper, joint.Lower);
        return
        [
            Count(index + 1), Ring(glue, laid), Count(on + 1), joint.Turn is double turn ? style.Print(turn, Quantity.Angle) : "–", joint.InShort.In(style),
            joint.Circle > 0 ? $"circle Ø {Caliper.Short(style, joint.Circle)}, {(joint.Centring == Centring.OuterCircle ? "outside" : "inside")}" : "cross lines", "",
        ];
    }

    private static string Ring(GluePlan glue, int ring) =>
        Shortened.To($"{Count(ring + 1)} {glue.Rings[ring].Ring.Ring.Name}", s => Typesetter.WidthOf(s, TypeScale.Number) <= MostWords);

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
