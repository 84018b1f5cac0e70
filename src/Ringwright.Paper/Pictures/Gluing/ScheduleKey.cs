using Ringwright.Paper.Blocks;

namespace Ringwright.Paper.Pictures.Gluing;

/// <summary>What the bars of a schedule mean.</summary>
internal static class ScheduleKey
{
    public const string Words = "Black: hands at work; G glue parts, T true, C close, F flatten, S stack. Slanted: under a band. Crossed: in a press. Dashed: left lying. Line: curing. Grey, with its length above: nobody need be there.";

    public static Paragraph Block => new(Words, Lettering.TypeScale.Caption);
}
