using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Bench;

/// <summary>
/// The turned solid: a vase of 40 rings of 36 segments, mesh and volume, beside manifold-3d; then how time and memory grow.
/// All ours on one thread.
/// </summary>
internal sealed class SolidBench : IBench
{
    private const int VaseRings = 40;
    private const int VaseCount = 36;

    // Ways of a few milliseconds run this often in a round, and the least counts: what is longer is the machine's other work.
    private const int QuickRuns = 15;

    private const int InARow = 300;

    private static readonly Facets Fixed = Facets.Fixed(8);

    public string Name => "solid";

    public string Title => "mesh and volume of a turned vase, 40 rings of 36 segments, 8 facets and 4 slices each";

    public void Run(TextWriter output)
    {
        Times(output);
        output.WriteLine();
        Checks(output);
        output.WriteLine();
        WriteGrowth(output);
    }

    private static void Times(TextWriter output)
    {
        ImmutableArray<TurnedRing> vase = Vase(VaseRings, VaseCount);
        using ManifoldPeer? peer = ManifoldPeer.Start();
        Way Peer(string name, string way, double? mark = null, int runs = 1) =>
            new(name, () => LeastOf(runs, () => peer?.Run(way).Ms), peer is null ? "no node with manifold-3d here" : "") { LeastRatio = peer is null ? null : mark };
        Way Ours(string name, Action work) => new(name, () => LeastOf(QuickRuns, () => Stopclock.Once(work)));
        Contest.Write(output,
        [
            Ours("ours, mesh and volume", () => TurnedMesh.Of(vase, Fixed).Volume()) with { MostMs = 2.5 },
            Ours("ours, mesh alone", () => TurnedMesh.Of(vase, Fixed)),
            Ours("ours, mesh, volume and board coordinates", () => WithBoards(vase)),
            Ours("ours, mesh for pictures: own corners, normals, boards", () => TurnedMesh.Of(vase, Fixed, MeshCorners.PerFace).BoardCoordinates()),
            Ours("ours, exact volume, balance and areas, no mesh", () => TurnedMass.Of(vase, 700, 600, 800)),
            Peer("manifold-3d, one revolve per ring, copied by rotation", "revolveOnce", 25, QuickRuns),
            Peer("manifold-3d, one revolve per segment", "revolveEach"),
            Peer("manifold-3d, one cut per ring, copied by rotation", "cutOnce"),
            Peer("manifold-3d, each segment cut from its ring", "cutEach", 1000),
        ]);
        output.WriteLine();
        WriteVolumes(output, vase, peer);
    }

    private static double? LeastOf(int runs, Func<double?> run)
    {
        double[] known = [.. Enumerable.Range(0, runs).Select(_ => run()).OfType<double>()];
        return known.Length == 0 ? null : known.Min();
    }

    private static double WithBoards(ImmutableArray<TurnedRing> vase)
    {
        var mesh = TurnedMesh.Of(vase, Fixed);
        return mesh.Volume() + mesh.BoardCoordinates()[0];
    }

    private static void WriteVolumes(TextWriter output, ImmutableArray<TurnedRing> vase, ManifoldPeer? peer)
    {
        var mesh = TurnedMesh.Of(vase, Fixed);
        output.WriteLine(Text($"ours: {mesh.Volume():0.000} mm³, {mesh.TriangleCount:N0} triangles; exact, without facets: {TurnedMass.Of(vase, 700, 600, 800).Whole.Volume:0.000} mm³"));
        if (peer is null) return;
        (_, double volume, int triangles) = peer.Run("revolveOnce");
        output.WriteLine(Text($"manifold-3d, revolve: {volume:0.000} mm³, {triangles:N0} triangles; ratio of volumes − 1: {(mesh.Volume() / volume) - 1:0.0e+0}"));
        (_, volume, triangles) = peer.Run("cutEach");
        output.WriteLine(Text($"manifold-3d, cut: {volume:0.000} mm³, {triangles:N0} triangles"));
    }

    private static void Checks(TextWriter output)
    {
        ImmutableArray<TurnedRing> vase = Vase(VaseRings, VaseCount);
        _ = TurnedMesh.Of(vase, Fixed);
        long before = GC.GetAllocatedBytesForCurrentThread();
        var mesh = TurnedMesh.Of(vase, Fixed);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        int collections = GC.CollectionCount(2);
        double mean = Stopclock.Once(() =>
        {
            for (int i = 0; i < InARow; i++) TurnedMesh.Of(vase, Fixed).Volume();
        }) / InARow;
        collections = GC.CollectionCount(2) - collections;
        output.WriteLine(Text($"mesh and volume, {InARow} in a row, all that the machine and the garbage collector do counted in: {mean:0.0} ms each, {collections} full collections"));
        long buffers = (4L * mesh.Positions.Length) + (4L * mesh.Indices.Length);
        long parts = 28L * mesh.Parts.Length;
        output.WriteLine(Text($"allocated {allocated / 1e6:0.000} MB: vertices and triangles {buffers / 1e6:0.000} MB, list of segments {parts / 1e6:0.000} MB, scratch {(allocated - buffers - parts) / 1e6:0.000} MB"));
    }

    // Rings of 100 segments, otherwise like the vase.
    private static void WriteGrowth(TextWriter output)
    {
        int[] sizes = [1_000, 5_000, 20_000, 40_000, 80_000];
        List<(double Segments, double Ms, double Bytes)> seen = [];
        output.WriteLine("| segments | triangles | ms | MB allocated | ns per triangle |");
        output.WriteLine("|---:|---:|---:|---:|---:|");
        foreach (int size in sizes)
        {
            ImmutableArray<TurnedRing> rings = Vase(size / 100, 100);
            int triangles = 0;
            double ms = Enumerable.Range(0, 9).Min(_ => Stopclock.Once(() =>
            {
                var mesh = TurnedMesh.Of(rings, Fixed);
                triangles = mesh.TriangleCount;
                mesh.Volume();
            }));
            long before = GC.GetAllocatedBytesForCurrentThread();
            _ = TurnedMesh.Of(rings, Fixed);
            double bytes = GC.GetAllocatedBytesForCurrentThread() - before;
            seen.Add((size, ms, bytes));
            output.WriteLine(Text($"| {size:N0} | {triangles:N0} | {ms:0.0} | {bytes / 1e6:0.0} | {1e6 * ms / triangles:0.00} |"));
        }

        output.WriteLine();
        output.WriteLine(Text($"fitted exponents (log-log least squares): time {Growth.Exponent(seen.Select(s => (s.Segments, s.Ms))):0.00}, memory {Growth.Exponent(seen.Select(s => (s.Segments, s.Bytes))):0.000}; mark: 20,000 segments under 1,000 ms, {Way.Verdict(seen.Single(x => x.Segments == 20_000).Ms < 1000)}"));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static ImmutableArray<TurnedRing> Vase(int rings, int count) =>
        [.. Enumerable.Range(0, rings).Select(ring => new TurnedRing(Section(ring, rings), Segments(count)))];

    private static WallSection Section(int ring, int rings) => new([.. Enumerable.Range(0, 5).Select(slice =>
    {
        double z = (6 * ring) + (1.5 * slice);
        double radius = 60 + (25 * Math.Sin(Math.PI * z / (6 * rings)));
        return new WallLevel(z, radius, radius - 6);
    })]);

    private static ImmutableArray<TurnedSegment> Segments(int count) => [.. Enumerable.Range(0, count).Select(i => new TurnedSegment(
        new(2 * Math.PI * i / count), new(2 * Math.PI * (i + 1) / count), i % 3, Frame3D.Identity))];
}
