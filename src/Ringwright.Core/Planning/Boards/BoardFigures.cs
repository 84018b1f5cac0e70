using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>The numbers of one ring that is sawn out of a board: tilt, cuts, what it measures at both faces.</summary>
internal static class BoardFigures
{
    // Room for the blade to be threaded, mm. Common practice, no source.
    private const double Clearance = 0.5;

    public static void Add(BoardGroupPlan board, int index, Shop shop, FigureBook book)
    {
        SawnBoardRing ring = board.Rings[index];
        double q = book.Know("q", "wood left on the radius for turning", WantedFaces.Allowance(ring.Ring, shop), Quantity.Length);
        book.Know("T", "thickness of the board, the height of the ring", board.Thickness, Quantity.Length);
        book.Know("k", "kerf, normal to the blade", board.Kerf, Quantity.Length);
        AddTilt(ring, index + 1 < board.Rings.Length ? board.Rings[index + 1] : null, q, shop, book);
        AddSizes(ring, index == 0 ? null : board.Rings[index - 1].Inside, book);
        if (index == 0) AddHole(shop, book);
        if (index == board.Rings.Length - 1) AddMiddle(board, book);
    }

    private static void AddTilt(SawnBoardRing ring, SawnBoardRing? next, double q, Shop shop, FigureBook book)
    {
        BoardCut cut = ring.Inside;
        book.Know("θl", "least tilt of the cut inside the ring", ring.Range.LeastTilt, Quantity.Angle);
        book.Know("θm", "most tilt of the cut inside the ring", ring.Range.MostTilt, Quantity.Angle);
        if (next is not null)
        {
            double clear = (next.Ring.Outside.Millimetres / 2) - WantedFaces.Inner(ring.Ring) + q + WantedFaces.Allowance(next.Ring, shop);
            book.Know("d", $"outside of {next.Ring.Name} at its wide face less inside of this ring at its narrow one, allowances included", clear, Quantity.Length);
            book.Add("least-tilt", "Least tilt of the cut", ring.Range.LeastTilt, Quantity.Angle, "atan(max(0, (d + k·sqrt(1 + (d^2 − k^2)/T^2))/(1 − k^2/T^2))/T)", "d k T",
                "The next ring's wide face must clear this ring's narrow face by the slot: the step less the slot is at least d.", Sources.Cones);
        }

        book.AddFound("most-tilt", "Most tilt of the cut", ring.Range.MostTilt, Quantity.Angle, "most tilt at which the slot still fits between both rings at both faces, and the table turns (45°)", "T k",
            "Steeper, and one of the two rings loses wood that it needs, or the saw's table stops.", Sources.Cones);
        book.Know("θ", "tilt of the cut inside the ring", book.AddFound("tilt", "Tilt of the cut inside the ring", cut.Tilt, Quantity.Angle,
            "fewest different tilts for the board, each between θl and θm, a round number where one fits", "θl θm",
            "The blade's upper end leans away from the disc's centre; the wide face is up.", Sources.Cones), Quantity.Angle);
        book.AddFound("tilt-within", "Set the tilt within", Math.Min(cut.Tilt - ring.Range.LeastTilt, ring.Range.MostTilt - cut.Tilt), Quantity.Angle, "smaller of θ − θl and θm − θ", "θ θl θm",
            "Further off, the cut takes wood that one of the two rings needs; upright, 0, only the other way.", Sources.Cones);
        book.Know("S", "step of the cut", book.Add("step", "Step of the cut from face to face", cut.Step, Quantity.Length, "T·tan(θ)", "T θ",
            "How much further out the cut comes up than it went in; the tilt is atan(S/T).", Sources.Cones), Quantity.Length);
        book.Add("step-per-degree", "The step changes for each degree by", ring.Range.Thickness / Math.Pow(Math.Cos(cut.Tilt), 2) * Math.PI / 180, Quantity.Length, "T/cos(θ)^2·π/180", "T θ",
            "An error of the table shows at the far face only.", Sources.Cones);
        book.Know("κ", "width of the slot, level", book.Add("kerf-across", "Width of the slot, level", cut.KerfAcross, Quantity.Length, "k/cos(θ)", "k θ",
            "A tilted blade takes more of the wall than an upright one.", Sources.Cones), Quantity.Length);
    }

    private static void AddSizes(SawnBoardRing ring, BoardCut? outside, FigureBook book)
    {
        book.Know("di", "inside at the narrow face", book.AddFound("inside-narrow", "Inside at the narrow face", 2 * ring.Narrow.Inner, Quantity.Length,
            "half way between what this ring and the next one need", "θ", "Where the line of the cut is drawn on the lower face.", Sources.Cones), Quantity.Length);
        book.Know("Dw", "inside at the wide face", book.Add("inside-wide", "Inside at the wide face", 2 * ring.Wide.Inner, Quantity.Length, "di + 2·S", "di S",
            "Draw this round on the face that is up; the blade runs inside the line.", Sources.Cones), Quantity.Length);
        if (outside is BoardCut cut)
        {
            book.Know("bp", "inside radius of the ring before at the narrow face", cut.InsideNarrow, Quantity.Length);
            book.Know("Sp", "step of the cut before", cut.Step, Quantity.Length);
            book.Know("κp", "width of the slot before", cut.KerfAcross, Quantity.Length);
        }
        else
        {
            book.Know("D", "diameter to be turned", ring.Ring.Outside.Millimetres, Quantity.Length);
        }

        (string narrow, string wide, string before, string steps) = outside is null ? ("D + 2·q", "D + 2·q", "D q", "D q") : ("2·(bp − κp)", "2·(bp − κp + Sp)", "bp κp", "bp κp Sp");
        book.Know("do", "outside at the narrow face", book.Add("outside-narrow", "Outside at the narrow face", 2 * ring.Narrow.Outer, Quantity.Length, narrow, before,
            outside is null ? "The disc's rim is left as it is until the lathe." : "What the cut before leaves.", Sources.Cones), Quantity.Length);
        book.Know("Ow", "outside at the wide face", book.Add("outside-wide", "Outside at the wide face", 2 * ring.Wide.Outer, Quantity.Length, wide, steps,
            outside is null ? "The disc's rim is left as it is until the lathe." : "What the cut before leaves.", Sources.Cones), Quantity.Length);
        book.Add("wall-narrow", "Wall at the narrow face", ring.Narrow.Wall, Quantity.Length, "(do − di)/2", "do di",
            "The wall that can be turned here is this, less what is left for turning on either side.", Sources.Cones);
        book.Add("wall-wide", "Wall at the wide face", ring.Wide.Wall, Quantity.Length, "(Ow − Dw)/2", "Ow Dw",
            "The wall that can be turned here is this, less what is left for turning on either side.", Sources.Cones);
    }

    private static void AddHole(Shop shop, FigureBook book)
    {
        Length blade = shop.Saw.NarrowBlade ?? Saw.UsualNarrowBlade;
        double width = book.Know("B", "width of the narrow blade from teeth to back" + (shop.Saw.NarrowBlade is null ? " (starting value)" : ""), blade.Millimetres, Quantity.Length);
        double clear = book.Know("cl", "room to thread it", Clearance, Quantity.Length), k = book.Known("k");
        double hole = book.Know("h", "start hole", book.Add("start-hole", "Start hole, drilled at the same tilt", Math.Sqrt((width * width) + (k * k)) + clear, Quantity.Length, "sqrt(B^2 + k^2) + cl", "B k cl",
            "The blade's width and its set are the sides of the rectangle that must pass through.", Sources.Cones), Quantity.Length);
        book.Add("hole-bite", "The start hole reaches past the slot, on each side, by", (hole - k) / (2 * Math.Cos(book.Known("θ"))), Quantity.Length, "(h − k)/(2·cos(θ))", "h k θ",
            "Drilled in the middle of the slot it takes this from both rings; up to the wood left for turning it vanishes.", Sources.Cones);
    }

    private static void AddMiddle(BoardGroupPlan board, FigureBook book)
    {
        book.Know("bl", "inside radius of the last ring at its narrow face", board.Rings[^1].Narrow.Inner, Quantity.Length);
        book.Add("middle-wide", "Left in the middle, at the wide face", 2 * board.Middle.Wide, Quantity.Length, "2·(bl − κ + S)", "bl κ S",
            "A base, a lid or another small ring may come out of it.", Sources.Cones);
        book.Add("middle-narrow", "Left in the middle, at the narrow face", 2 * board.Middle.Narrow, Quantity.Length, "2·(bl − κ)", "bl κ",
            "Turned over it is the wide foot of the piece.", Sources.Cones);
    }
}
