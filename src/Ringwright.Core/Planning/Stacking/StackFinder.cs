using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>
/// Finds a stack of rings for a shape: heights from the boards at hand, discs where the shape is solid and rings where it is
/// hollow, and few widths to rip. Pure.
/// </summary>
public static class StackFinder
{
    // Boards are ripped to this, mm.
    private const double RipStep = 0.1;

    private const double LargestDrilled = 16; // mm

    private const double WidestShare = 0.95;

    private static readonly int[] Counts = [6, 8, 9, 10, 12, 15, 16, 18, 20, 24, 30, 32, 36, 40, 45, 48, 60, 72, 90, 120, 144, 180, 240, 360];

    /// <summary>Finds the stack.</summary>
    /// <exception cref="BadInputException">The shape or a height cannot be used.</exception>
    public static StackSuggestion Find(StackRequest request, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(shop);
        Check(request);
        TurnedForm form = TurnedForm.Of(request.Shape);
        var blanks = new Blanks(request, shop, form);
        // The wood below a shape that begins above the boards' bottom is turned away; the stack still starts at 0.
        var search = new HeightSearch(request.Heights, form.Top, (from, to) => blanks.Wood(from, to));
        (double[] Heights, double Wood) least = search.Find(0);
        (double[] Heights, double Wood) chosen = search.Find(request.RingWorth * least.Wood);
        (double[] Heights, double Wood) fewest = search.Find(1e6 * (1 + least.Wood));
        return Suggest(request, blanks, chosen, (fewest.Heights.Length, fewest.Wood), (least.Heights.Length, least.Wood));
    }

    private static StackSuggestion Suggest(StackRequest request, Blanks blanks, (double[] Heights, double Wood) stack, (int, double) fewest, (int, double) least)
    {
        var found = new List<(Ring Ring, Blank Blank)>();
        double z = 0;
        foreach (double height in stack.Heights)
        {
            Blank blank = blanks.Of(z, z + height);
            found.Add((RingOf(request, blank, height, found.Count), blank));
            z += height;
        }

        blanks.Overlap(found);
        int[] hollow = [.. Enumerable.Range(0, found.Count).Where(i => found[i].Ring is SegmentRing)];
        ImmutableArray<WidthChoice> widths = WidthGroups.All([.. hollow.Select(i => RipUp(found[i].Blank.Width))], [.. hollow.Select(i => found[i].Blank.PerWidth)]);
        int chosen = widths.IsEmpty ? -1 : widths.Select((w, k) => (w, k)).First(p => p.w.Extra <= request.ExtraWood * stack.Wood || p.k == widths.Length - 1).k;
        var rings = found.Select(f => f.Ring).ToArray();
        for (int h = 0; h < hollow.Length; h++)
        {
            double width = Math.Round(widths[chosen].Widths[widths[chosen].GroupOf[h]], 3);
            // A small ring among wide ones would come to a point: it keeps its own width.
            if (width < WidestShare * found[hollow[h]].Blank.Outer)
                rings[hollow[h]] = (SegmentRing)rings[hollow[h]] with { BoardWidth = Length.FromMillimetres(width) };
        }

        return new([.. rings], stack.Wood, fewest, least, widths, chosen);
    }

    private static double RipUp(double width) => Math.Ceiling((width / RipStep) - 1e-6) * RipStep;

    private static Ring RingOf(StackRequest request, Blank blank, double height, int index)
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"Ring {index + 1}");
        double shift = request.BrickLaid && index % 2 == 1 ? 0.5 : 0;
        var thickness = Length.FromMillimetres(height);
        ImmutableArray<string> woods = [.. request.Woods.Take(blank.Segments)];
        return blank.IsDisc
            ? new WedgeDisc { Name = name, Segments = blank.Segments, Thickness = thickness, Shift = shift, Woods = woods }
            : new SegmentRing { Name = name, Segments = blank.Segments, Thickness = thickness, Shift = shift, Woods = woods };
    }

    // Woods that take turns come round evenly; where no count is so, any will do.
    private static int[] CountsFor(int woods)
    {
        int[] even = [.. Counts.Where(c => c % woods == 0)];
        return even.Length > 0 ? even : Counts;
    }

    private static void Check(StackRequest request)
    {
        if (request.Heights.IsDefaultOrEmpty) throw new BadInputException("heights", "there is none", "name the ring heights that the boards at hand give");
        foreach (double height in request.Heights)
            if (!(height >= 0.5 && height <= 500)) throw new BadInputException("heights", string.Create(CultureInfo.InvariantCulture, $"{height:0.###} mm cannot be a ring's height"), "0.5 mm to 500 mm can");
        if (request.Segments is < 3 or > 360) throw new BadInputException("segments", $"{request.Segments} segments cannot make a ring", "3 to 360 can");
        if (!(request.RimEdge > 0)) throw new BadInputException("rim edge", "it is not above 0", "a length such as 25 mm can be");
        if (request.Woods.IsDefaultOrEmpty) throw new BadInputException("woods", "there is none", "name at least one");
    }

    /// <summary>What a ring must be glued to so that the shape can be turned from it. Lengths in mm.</summary>
    internal readonly record struct Blank(int Segments, double Outer, double Inner, double PerWidth)
    {
        public bool IsDisc => Inner <= 0;

        public double Width => Outer - Inner;
    }

    private sealed class Blanks(StackRequest request, Shop shop, TurnedForm form)
    {
        private readonly double _allowance = shop.Wanted.Allowance.Millimetres;
        private readonly double _flattened = 2 * shop.Sanding.Flattening.Millimetres;
        private readonly int[] _counts = CountsFor(request.Woods.Length);

        // Wedges to a point that a drill then opens are easier to fit than a ring around so small a hole. Common practice, no source.
        private bool IsBored => request.Shape.Inside is Bore { Floor: null } bore && bore.Diameter.Millimetres <= LargestDrilled;

        public double Wood(double from, double to)
        {
            Blank blank = Of(from, to);
            return blank.PerWidth * blank.Width;
        }

        public Blank Of(double from, double to)
        {
            WallExtents wall = Sizing.Within(form, from, to) is { } part ? form.Extents(part.From, part.To) : default;
            double outer = wall.MaxOuter + _allowance;
            int n = request.Segments ?? _counts.FirstOrDefault(c => 2 * outer * Math.Tan(Math.PI / c) <= request.RimEdge, _counts[^1]);
            double inner = IsBored ? 0 : Math.Max(0, (wall.MinInner - _allowance) * Math.Cos(Math.PI / n));
            return Sized(n, outer, inner, to - from);
        }

        /// <summary>Widens rings inwards until neighbours' glue faces overlap by what is wanted.</summary>
        public void Overlap(List<(Ring Ring, Blank Blank)> stack)
        {
            for (int i = 0; i < stack.Count; i++)
            {
                double inner = stack[i].Blank.Inner;
                foreach (int next in (int[])[i - 1, i + 1])
                    if (next >= 0 && next < stack.Count) inner = Math.Min(inner, Reach(stack[i].Blank, stack[next].Blank));
                Blank wider = Sized(stack[i].Blank.Segments, stack[i].Blank.Outer, Math.Max(0, inner), stack[i].Ring.Thickness.Millimetres);
                if (!stack[i].Blank.IsDisc && !wider.IsDisc) stack[i] = (stack[i].Ring, wider);
            }
        }

        // How far in a ring must reach so that it overlaps its neighbour.
        private double Reach(Blank ring, Blank next) =>
            (Math.Min(ring.Outer, next.Outer) - request.GlueOverlap) * Math.Cos(Math.PI / ring.Segments);

        // Wood per millimetre of width: what each wedge takes of the strip in the middle of its depth, times the board's thickness.
        private Blank Sized(int n, double outer, double inner, double height)
        {
            WedgeGeometry sawn = new WedgeGeometry(n, outer, inner).BeforeSanding(shop.Sanding.PerFace.Millimetres);
            StripLayout strip = ClosedRing.StripOf(sawn, shop);
            return new(n, outer, inner, n * strip.Pitch * (height + _flattened));
        }
    }
}
