using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Documents;

/// <summary>Says whether what is inside a shape can be turned.</summary>
internal static class InsideCheck
{
    /// <summary>The fields by themselves, between the heights of the outer curve.</summary>
    public static void Check(Inside? inside, double bottom, double top)
    {
        switch (inside)
        {
            case Wall wall:
                CheckWall(wall);
                Floor(wall.Floor, bottom, top);
                break;
            case Bore bore:
                CheckBore(bore, top - bottom);
                Floor(bore.Floor, bottom, top);
                break;
            case Hollow hollow:
                ShapeCheck.Points("inner curve", hollow.Points, 0);
                if (hollow.Points[0].Height.Millimetres >= top) throw new BadInputException("inner curve, point 1, height", $"{hollow.Points[0].Height} is not below the top at {Mm(top)}", "the inside begins below the top");
                if (hollow.Points[0].Height == hollow.Points[^1].Height) throw new BadInputException("inner curve", "all its points are at one height", "it must rise");
                break;
        }
    }

    /// <summary>Whether the inside leaves wood all around, hollows something, and can be reached by a tool.</summary>
    public static void CheckRoom(Shape shape, TurnedForm form)
    {
        if (shape.Inside is null) return;
        WallLine inner = form.InnerLine;
        if (inner.IsEmpty && shape.Inside is not Wall) throw new BadInputException("inside", "it has no width anywhere", "give it a diameter, or leave the piece solid");
        if (inner.IsEmpty) throw new BadInputException("wall, thickness", "it is as thick as the piece everywhere, so nothing is hollow", "make it thinner, the floor lower, or the piece solid");
        if (shape.Inside is not Wall && Crossing(form.OuterCurve.Line, inner, inner.Bottom, Math.Min(inner.Top, form.Top)) is double z)
            throw new BadInputException("inside", $"at height {Mm(z)} it is not smaller than the outside of {Mm(2 * form.Outer(z))}", "leave wood between them");
        if (Closed(form, inner) is (double from, double to))
            throw new BadInputException("inside", $"the hollow from height {Mm(from)} to {Mm(to)} is closed at both ends", "a wall this thick needs a wider opening for the tool");
        if (shape.Holding is { Kind: HoldingKind.Recess } recess && inner.Bottom > form.Bottom && form.Bottom + recess.Length.Millimetres >= inner.Bottom)
            throw new BadInputException("recess, length", $"{recess.Length} deep it breaks through the floor at {Mm(inner.Bottom)}", "make it shallower or the floor higher");
    }

    private static void CheckWall(Wall wall)
    {
        Thickness("wall, thickness", wall.Thickness);
        if (wall.Along.IsDefaultOrEmpty) return;
        if (wall.Along.Length > ShapeCheck.MostPoints) throw new BadInputException("wall, along", $"it has {wall.Along.Length} heights", $"at most {ShapeCheck.MostPoints} are taken");
        for (int i = 0; i < wall.Along.Length; i++)
        {
            string place = $"wall, along {i + 1}";
            WallPoint point = wall.Along[i] ?? throw new BadInputException(place, "it is null", "a height and a thickness stand there");
            Thickness($"{place}, thickness", point.Thickness);
            PieceCheck.Between($"{place}, height", point.Height, 0, PieceCheck.LargestSize);
            if (i > 0) Follow(place, wall.Along[i - 1], point);
        }
    }

    private static void Follow(string place, WallPoint before, WallPoint point)
    {
        double rise = point.Height.Millimetres - before.Height.Millimetres;
        if (rise <= 0) throw new BadInputException($"{place}, height", $"{point.Height} is not above {before.Height}", "heights rise from one to the next");
        double change = Math.Abs(point.Thickness.Millimetres - before.Thickness.Millimetres);
        if (change > 0.95 * rise)
            throw new BadInputException($"{place}, thickness", $"from {before.Thickness} to {point.Thickness} it changes as fast as the height", $"over {Mm(rise)} of height it may change by {Mm(0.95 * rise)} at most");
    }

    private static void CheckBore(Bore bore, double height)
    {
        PieceCheck.Between("bore, diameter", bore.Diameter, PieceCheck.SmallestSize, PieceCheck.LargestSize);
        if (bore.EndTrim is Length trim) PieceCheck.Between("bore, endTrim", trim, 0, height / 2);
        if (bore.Tube is not Length tube) return;
        PieceCheck.Between("bore, tube", tube, PieceCheck.SmallestSize, PieceCheck.LargestSize);
        double needed = tube.Millimetres + (2 * (bore.EndTrim?.Millimetres ?? 0));
        if (needed > height + 1e-6) throw new BadInputException("bore, tube", $"a tube of {tube} and the trim at both ends need {Mm(needed)}, but the piece is {Mm(height)} high", "make the piece higher or the tube shorter");
    }

    private static void Floor(Length? floor, double bottom, double top)
    {
        if (floor is not Length at) return;
        if (at.Millimetres >= top) throw new BadInputException("floor", $"{at} is not below the top at {Mm(top)}", "the floor lies below the top");
        if (at.Millimetres <= bottom) throw new BadInputException("floor", $"{at} is not above the bottom at {Mm(bottom)}", "give the height of its upper side, or none for open right through");
    }

    private static void Thickness(string place, Length thickness) => PieceCheck.Between(place, thickness, ShapeCheck.ThinnestWall, PieceCheck.LargestSize);

    // Exact ranges of both walls settle most heights at once; what is left is halved until it is settled or thin as a hair.
    private static double? Crossing(WallLine outer, WallLine inner, double from, double to)
    {
        if (outer.Extents(from, to).Least > inner.Extents(from, to).Most) return null;
        if (outer.Radius(from, Side.Above) <= inner.Radius(from, Side.Above)) return from;
        if (outer.Radius(to, Side.Below) <= inner.Radius(to, Side.Below)) return to;
        double middle = (from + to) / 2;
        bool parted = Least(outer, middle) <= Most(inner, middle); // at a step also the wood below against the hollow above
        if (to - from < 1e-6 || parted) return middle;
        return Crossing(outer, inner, from, middle) ?? Crossing(outer, inner, middle, to);
    }

    private static double Least(WallLine line, double z) => Math.Min(line.Radius(z, Side.Below), line.Radius(z, Side.Above));

    private static double Most(WallLine line, double z) => Math.Max(line.Radius(z, Side.Below), line.Radius(z, Side.Above));

    private static (double From, double To)? Closed(TurnedForm form, WallLine inner)
    {
        double from = inner.Bottom;
        for (int i = 0; i < inner.Arcs.Length; i++)
        {
            double to = inner.Arcs[i].To;
            if (i + 1 < inner.Arcs.Length && inner.Arcs[i + 1].From == to) continue;
            if (from > form.Bottom && to < form.Top) return (from, to);
            if (i + 1 < inner.Arcs.Length) from = inner.Arcs[i + 1].From;
        }

        return null;
    }

    private static string Mm(double millimetres) => string.Create(CultureInfo.InvariantCulture, $"{millimetres:0.##} mm");
}
