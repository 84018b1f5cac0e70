using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>One thickness on the planer, for strips of all woods. Lengths in mm.</summary>
/// <param name="Thickness">As planed.</param>
/// <param name="Rough">Rough boards to begin with; null when none is thick enough.</param>
/// <param name="Slices">Into how many such a board is resawn first; 1 when it is planed as it is.</param>
/// <param name="Passes">Passes through the planer from there, both faces counted; 0 when none is thick enough.</param>
/// <param name="Strips">What is planed at it, widest first.</param>
public sealed record PlanerSetting(double Thickness, double? Rough, int Slices, int Passes, ImmutableArray<MillingStrip> Strips);

/// <summary>One width on the rip fence, for strips of all woods and thicknesses.</summary>
/// <param name="Width">As trued, mm.</param>
/// <param name="Rough">As ripped first, mm: with the wood that truing the edges takes.</param>
/// <param name="Strips">What is ripped at it.</param>
public sealed record RipSetting(double Width, double Rough, ImmutableArray<MillingStrip> Strips);

/// <summary>Two widths that are nearly equal: what it costs to rip both at the wider one.</summary>
/// <param name="Ring">The ring whose strips would be wider.</param>
/// <param name="Width">Its width now, mm.</param>
/// <param name="Wider">The width that another ring has already, mm.</param>
/// <param name="Other">That ring.</param>
/// <param name="Extra">Wood it takes more, mm³.</param>
public sealed record NearWidth(string Ring, double Width, double Wider, string Other, double Extra)
{
    /// <summary>What it would take and spare, in words.</summary>
    public Sentence Sentence => Sentence.Of($"{Sentence.Escape(Ring)}, {{0}}: ripped as wide as {Sentence.Escape(Other)}, {{1}}, it saves a setting of the fence and takes {{2}} more wood (its boardWidth).",
        Measured.Length(Width), Measured.Length(Wider), new(Extra, Core.Measures.Quantity.Volume));
}

/// <summary>From rough wood to the strips of a whole piece, batched so that each machine is set as seldom as can be.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Strips">All strips, thickest first, then widest.</param>
/// <param name="Planer">The settings of the planer, thickest first.</param>
/// <param name="Rip">The settings of the rip fence, widest first.</param>
/// <param name="Near">Widths that are nearly equal.</param>
/// <param name="Figures">How exact it must be, each with its reason.</param>
/// <param name="Minds">What is not safe or not to be had as it stands.</param>
public sealed record MillingPlan(
    Plan Plan, ImmutableArray<MillingStrip> Strips, ImmutableArray<PlanerSetting> Planer, ImmutableArray<RipSetting> Rip, ImmutableArray<NearWidth> Near, ImmutableArray<Figure> Figures, ImmutableArray<Sentence> Minds)
{
    // A rule of our own: up to a twentieth more wood is worth one setting less.
    private const double NearShare = 0.05;

    /// <summary>The milling plan of a plan.</summary>
    public static MillingPlan Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<MillingStrip> strips = MillingStrip.Of(plan);
        ImmutableArray<PlanerSetting> planer = [.. Runs(strips, s => s.Thickness).Select(run => Setting(run, plan.Shop))];
        ImmutableArray<RipSetting> rip = [.. Runs([.. strips.Where(s => s.Width is not null).OrderByDescending(s => s.Width)], s => s.Width!.Value)
            .Select(run => new RipSetting(run[0].Width!.Value, run[0].Width!.Value + plan.Shop.Milling.WidthAllowance.Millimetres, run))];
        return new(plan, strips, planer, rip, [.. NearWidths(plan, rip)], MillingFigures.Of(plan), [.. MillingMinds(plan, planer)]);
    }

    /// <summary>The figure called <paramref name="name"/>, or null.</summary>
    public Figure? Find(string name) => Figures.FirstOrDefault(f => string.Equals(f.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>What to do, in order. Common practice, no source, but for the numbers.</summary>
    public IEnumerable<Sentence> Steps()
    {
        Milling mill = Plan.Shop.Milling;
        Measured Length(Core.Measures.Length l) => Measured.Length(l.Millimetres);
        yield return Sentence.Of("Crosscut the rough boards to {0} and longer, never under {1}: what is shorter is not held by the rollers. Small parts come off a long board last.", Length(Plan.Shop.Boards.Length), Length(mill.LeastPlanerLength));
        yield return Sentence.Of("Flatten one face and square one edge of every board on the jointer. Mark both.");
        if (Planer.Any(p => p.Slices > 1)) yield return Sentence.Of("Resaw the boards for thin strips on the bandsaw, each slice {0} over its thickness; the flat face of the rest is planed anew after every slice.", Length(mill.ThicknessAllowance));
        yield return Sentence.Of(Planer.Length == 1
            ? "Plane to {0}, the flat face down, at most {1} a pass, the last pass for all boards at one setting."
            : "Plane from the thickest to the thinnest, {2} settings: all boards of one setting in a row, the flat face down, at most {1} a pass, the last pass for all of them without touching the handle.",
            Measured.Length(Planer.Select(p => p.Thickness).FirstOrDefault()), Length(mill.PerPass), Measured.Count(Planer.Length));
        if (Rip.Length > 0)
            yield return Sentence.Of(Rip.Length == 1
                ? "Rip every strip {0} over its width, the square edge to the fence; then true both edges to {1}."
                : "Rip from the widest to the narrowest, {2} settings, every strip {0} over its width, the square edge to the fence; then true both edges to the width in the list.",
                Length(mill.WidthAllowance), Measured.Length(Rip[0].Width), Measured.Count(Rip.Length));
        yield return Sentence.Of("Mill the strips for the spares and one for test cuts with them: a second setting is never quite the first.");
        yield return Find("strip-taper") is Figure taper
            ? Sentence.Of("Measure each strip at both ends with a caliper: widths within {0} of each other for a ring that closes joint by joint. 0.1 mm (0.004 in) opens it by {2} at the rim, which truing must take off two halves. Thicknesses within {1}, or flattening does not reach the low pieces.",
                    taper.Measured, Find("thickness-step")!.Measured, Find("taper-opens")!.Measured)
            : Sentence.Of("Measure each strip at both ends with a caliper, width and thickness.");
    }

    private static PlanerSetting Setting(ImmutableArray<MillingStrip> run, Shop shop)
    {
        double thickness = run[0].Thickness, needed = thickness + shop.Milling.ThicknessAllowance.Millimetres;
        double? rough = shop.Milling.RoughThicknesses.Select(r => r.Millimetres).Where(r => r >= needed - 1e-9).Select(r => (double?)r).FirstOrDefault();
        // Each slice keeps the wood to plane off, and a kerf lies between two.
        int slices = rough is double board ? Math.Max(1, (int)Math.Floor(((board + shop.Saw.Kerf.Millimetres) / (needed + shop.Saw.Kerf.Millimetres)) + 1e-9)) : 1;
        double from = slices > 1 ? needed : rough ?? thickness;
        int passes = (int)Math.Ceiling(((from - thickness) / shop.Milling.PerPass.Millimetres) - 1e-9);
        return new(thickness, rough, slices, passes, [.. run.OrderByDescending(s => s.Width ?? 0)]);
    }

    // Neighbours of one size, in the order they come.
    private static IEnumerable<ImmutableArray<MillingStrip>> Runs(ImmutableArray<MillingStrip> strips, Func<MillingStrip, double> size)
    {
        for (int from = 0, to = 0; from < strips.Length; from = to)
        {
            while (to < strips.Length && MillingStrip.IsSame(size(strips[to]), size(strips[from]))) to++;
            yield return [.. strips.Skip(from).Take(to - from)];
        }
    }

    // Only rings around an open middle can take a wider strip: it reaches further in.
    private static IEnumerable<NearWidth> NearWidths(Plan plan, ImmutableArray<RipSetting> rip)
    {
        HashSet<string> canBeWider = [.. plan.Rings.Where(r => r.Ring is SegmentRing).Select(r => r.Ring.Name)];
        for (int i = 1; i < rip.Length; i++)
        {
            double more = rip[i - 1].Width - rip[i].Width;
            MillingStrip[] strips = [.. rip[i].Strips];
            if (more > NearShare * rip[i].Width || !strips.All(s => s.Rings.All(canBeWider.Contains))) continue;
            yield return new(string.Join(", ", strips.SelectMany(s => s.Rings).Distinct()), rip[i].Width, rip[i - 1].Width, rip[i - 1].Strips[0].Rings[0], more * strips.Sum(s => s.Thickness * s.Length));
        }
    }

    private static IEnumerable<Sentence> MillingMinds(Plan plan, ImmutableArray<PlanerSetting> planer)
    {
        const double Thinnest = 5; // mm; common practice, no source
        Milling mill = plan.Shop.Milling;
        if (plan.Shop.Boards.Length.Millimetres < mill.LeastPlanerLength.Millimetres)
            yield return Sentence.Of("Boards of {0} are shorter than the {1} that goes safely through the planer: plane longer ones and crosscut them afterwards.", Measured.Length(plan.Shop.Boards.Length.Millimetres), Measured.Length(mill.LeastPlanerLength.Millimetres));
        foreach (PlanerSetting thick in planer.Where(p => p.Rough is null))
            yield return Sentence.Of("No rough board is thick enough for {0} with {1} to plane off; the thickest is {2}. Glue two face to face, plane a thicker one, or make the ring of two.",
                Measured.Length(thick.Thickness), Measured.Length(mill.ThicknessAllowance.Millimetres), Measured.Length(mill.RoughThicknesses[^1].Millimetres));
        foreach (PlanerSetting thin in planer.Where(p => p.Thickness < Thinnest))
            yield return Sentence.Of("{0} is thin for a planer, which can shatter it: resaw it a little over, then a drum, or a carrier board under it.", Measured.Length(thin.Thickness));
    }
}
