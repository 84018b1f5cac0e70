using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>What holds for every ring, once: the order of work, how a first cut is judged, what a gap asks of the fence.</summary>
internal static class AllRingsSheet
{
    /// <summary>What the contents call these sheets.</summary>
    public const string Name = "For every ring";

    private static readonly string[] First =
    [
        "Take the ring's job sheet to the saw. Plane and rip its boards to the thickness and width printed large.",
        "Set fence and stop as its sheet says, and read them again after locking.",
        "Hold the first wedge on its true-scale outline: both faces must follow their lines from rim to tip. Measure the 100 mm rulers first.",
    ];

    private const string Last = "Lay half the ring dry against a straightedge before you saw the rest; then all of it. If it gapes, see “If a dry ring gapes”.";

    public static void Add(Packet packet, AllRings rings, bool cautions)
    {
        IReadOnlyList<string> care = [.. Cautions.ForWoods(rings.Plan.Shop, rings.Jobs.SelectMany(j => j.Ring.Layout).Select(s => s.Wood)), .. Cautions.For(rings.Plan.Shop.Sled.Kind)];
        packet.Flow(Name, "–", [
            new Section("For every ring, in this order", new ListBlock(ListMark.Number, [.. First, .. rings.Steps, Last], RingJob.Words)),
            .. cautions ? new IBlock[] { new Section("Take care", new ListBlock(ListMark.Caution, care)) } : [new Paragraph("The cautions for this work are on the sheet “Take care”. Read them first.", TypeScale.Body with { Weight = FontWeight.SemiBold })],
            .. FirstCuts.Of(rings),
            .. Gaps.Of(rings),
            .. Findings(rings),
        ]);
    }

    // What is said of several rings in the same words is said once.
    private static IEnumerable<IBlock> Findings(AllRings rings)
    {
        string[] found =
        [
            .. rings.Jobs.SelectMany(j => j.Ring.Findings.Select(f => (j.Ring.Ring.Name, Words: f.Sentence.In(j.Style))))
                .GroupBy(f => f.Words).Select(g => $"{string.Join(", ", g.Select(f => f.Name).Distinct())}: {g.Key}"),
        ];
        if (found.Length > 0) yield return new Section("Good to know, ring by ring", new ListBlock(ListMark.Dot, found, RingJob.Words));
    }
}
