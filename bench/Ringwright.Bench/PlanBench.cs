using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;
using Ringwright.Core.Turning;

namespace Ringwright.Bench;

/// <summary>What happens at every change on the screen: the whole piece planned anew, and its mesh made anew.</summary>
internal sealed class PlanBench : IBench
{
    private const int Runs = 9, Count = 36;
    private static readonly int[] RingsOfGrowth = [28, 56, 112, 224, 556];
    private const double RingHeight = 4; // mm: the tallest of these vases is still a vase

    public string Name => "plan";

    public string Title => "a vase planned anew, with its mesh: every ring's figures, findings and layout, then every turned segment";

    public void Run(TextWriter output)
    {
        (Piece piece, Shop shop) = Vase(42, Count);
        Plan plan = Planner.Plan(piece, shop);
        Contest.Write(output,
        [
            Least("plan and mesh, 42 rings of 36 segments", () => Mesh(Planner.Plan(piece, shop))) with { MostMs = 16 },
            Least("plan alone", () => Planner.Plan(piece, shop)),
            Least("turned piece and mesh alone", () => Mesh(plan)),
        ]);
        output.WriteLine();
        WriteGrowth(output);
    }

    private static void WriteGrowth(TextWriter output)
    {
        IReadOnlyList<(double Size, double Ms)> seen = Growth.Write(output, "segments", [.. RingsOfGrowth.Select(rings => rings * Count)], size =>
        {
            (Piece piece, Shop shop) = Vase(size / Count, Count);
            return () => Mesh(Planner.Plan(piece, shop));
        });
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Mark: 20,000 segments under 1000 ms, {Way.Verdict(seen[^1].Ms < 1000)}."));
    }

    private static Way Least(string name, Action work) => new(name, () => Enumerable.Range(0, Runs).Min(_ => Stopclock.Once(work)));

    private static void Mesh(Plan plan) => TurnedMesh.Of(plan.Turned().Rings, Facets.Within(0.05), MeshCorners.PerFace);

    private static (Piece Piece, Shop Shop) Vase(int rings, int segments)
    {
        double height = rings * RingHeight;
        Shape shape = StartingShapes.Of(PieceKind.Vase, Length.FromMillimetres(0.55 * height), Length.FromMillimetres(height));
        ImmutableArray<string> woods = ["walnut", "maple", "cherry"];
        double floor = ((Wall)shape.Inside!).Floor?.Millimetres ?? 0;
        Ring Of(int i) => i * RingHeight < floor
            ? new WedgeDisc { Name = $"Ring {i + 1}", Segments = segments, Thickness = Length.FromMillimetres(RingHeight), Shift = i % 2 / 2.0, Woods = woods }
            : new SegmentRing { Name = $"Ring {i + 1}", Segments = segments, Thickness = Length.FromMillimetres(RingHeight), Shift = i % 2 / 2.0, Woods = woods };
        var piece = new Piece { Name = "Vase", Kind = PieceKind.Vase, Shape = shape, Rings = [.. Enumerable.Range(0, rings).Select(Of)] };
        return (piece, Shop.Starting with { Boards = new() { Length = Length.FromMillimetres(3000) } });
    }
}
