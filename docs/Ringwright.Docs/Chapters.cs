namespace Ringwright.Docs;

/// <summary>What stands around the figures: the order of the work, and what is behind each group of formulas.</summary>
internal static class Chapters
{
    public const string Opening = """
        # The science behind each figure

        Every number of a plan can be asked where it comes from: in the app by its *Why*, in a shell by `ringwright explain FILE FIGURE`. This page collects all of them: formula, what its letters mean, and where it is published. It is written from the program by `dotnet run --project docs/Ringwright.Docs -- examples docs/science.md`, and a test fails when the two differ. Another test puts the inputs of every printed formula into it and compares the result with the figure.

        Lengths are in millimetres and angles in radians unless a formula says otherwise. *N* is the number of segments, *a* = π/N half the angle of a segment. "Common practice, no source" marks what the trade does and nobody published; change such a value in your shop's file when yours differs. What the wood does is described at length in [wood.md](wood.md); how the answers were checked stands in the tests, each with its source beside it.

        """;

    public static Chapter[] All { get; } =
    [
        new("Shape", """
            The outer curve is a smooth curve through its points that never swings beyond them; the inside is drawn, bored, or follows the outside at the wall's thickness. The thickness is that of a circle that rolls between both, not a horizontal distance. A ring must hold all of the shape between its lower and its upper face, so its sizes come from the extremes of the curve over that height.
            """, ["stack-height", "piece-height", "pieces", "widest", "wood-left", "thinnest-wall", "thinnest-at"]),
        new("The ring and its wedge", """
            A closed ring is a regular polygon; what is turned is the circle inside its flats and, of a ring, the circle outside its inner corners. Grain runs along the board, and therefore along the rim.
            """, ["wedge-angle", "across-flats", "across-corners", "board-width", "board-length", "board-thickness", "rim-edge", "tip", "sawn-rim-edge", "sawn-tip"]),
        new("The middle of a disc", """
            A wedge that is sawn too short leaves a hole, one that is sawn too far loses a corner of the next one. Sanding moves both.
            """, ["opening-flats", "opening-corners", "bore-margin", "easiest-tip"]),
        new("Settings at the saw", """
            Between two fences only the sum of both angles counts; the plan divides it evenly.
            """, ["mitre", "rule-offset", "sine-bar-height", "stop", "rule-accuracy"]),
        new("The strip", """
            A strip loses its squared end, a kerf at every cut, and what must be held in the end.
            """, ["strip-per-wedge", "strip-overhead", "wedges-per-board", "dust-share"]),
        new("Spares", """
            How many wedges to saw so that enough are good, at the confidence that is wanted.
            """, ["to-saw", "usual-enough", "boards", "length"]),
        new("Will it close?", """
            One cut makes two faces: what one wedge gains the next one loses, so that errors from cut to cut largely cancel around a ring, while an error of the fence's setting adds up. The chances below are exact for errors that are independent and normal; `fit` simulates what is not: unevenness, rounding, the band. An open joint is judged by the gap one is willing to see.
            """, ["closing-limit", "angle-per-wedge", "angle-per-fence", "angle-per-wedge-shared", "closing-mean", "closing-spread", "chance-to-close", "chance-after-correction", "share-from-setting", "share-from-cuts", "share-from-sanding"]),
        new("Open rings", """
            Segments with gaps between them stand on a plate or on the ring below.
            """, ["gap-at-rim", "gap-at-tip", "open-share", "plate-circle", "plate-inner-circle", "plate-step", "gap-per-wedge-error", "gap-difference", "last-gap-spread", "chance-even"]),
        new("Mixed rings and spacers", """
            Strips of even thickness between wedges move them outward; the wedges' faces then no longer meet in the middle.
            """, ["apex-radius", "moved-by-spacers", "spacer-thickness", "spacer-width", "spacer-length", "spacers-to-cut", "spacer-strips", "spacer-strip-length"]),
        new("Staves", """
            A stave that leans is cut with mitre and blade tilt together. The two follow from the lean and the number of staves, as in a tray with sloping sides.
            """, ["stave-length", "narrow-outside", "outside-narrow", "outside-wide", "inside-narrow", "inside-wide", "middle-narrow", "middle-wide", "wide-inside", "wall-narrow", "wall-wide", "face-angle", "blade-tilt", "end-tilt", "tilt-height", "tilt-counts", "mitre-counts", "kerf-across", "staves-across", "row-length", "row-overhead", "rows-per-board"]),
        new("Rings from one flat board", """
            Rings sawn out of a disc with a leaning blade are stacked into a bowl: each cut is the outside of one ring and the inside of the next.
            """, ["step", "tilt", "least-tilt", "most-tilt", "tilt-within", "step-per-degree", "glue-width", "glue-width-turned", "round", "start-hole", "hole-bite"]),
        new("Laminated boards", """
            Strips glued into a board before it is sawn into wedges; the pattern must come out even around the ring.
            """, ["pattern-repeat", "pitch-bare", "pitch-matched", "lamination-length", "lamination-repeats", "slab-thickness", "strip-width", "strip-height", "strip-length", "strip-count", "strip-stagger"]),
        new("Milling", """
            What planer and rip fence must keep so that joints and stack stay closed.
            """, ["strip-taper", "taper-opens", "thickness-step", "width-error"]),
        new("Moisture and movement", """
            Wood swells and shrinks across its grain and hardly along it. A segment's angle changes with it, a glued ring cannot follow, and carries a stress: see [wood.md](wood.md).
            """, ["moisture-shop-winter", "moisture-shop-summer", "moisture-home-winter", "moisture-home-summer", "moisture-glued", "moisture-home", "depth-change", "height-change", "opening-wish", "joint-pull", "wood-pull", "movement-use"]),
        new("Gluing", """
            How many joints can be spread and closed before the glue skins over, and what is lost when halves are trued.
            """, ["joints-at-once", "joints", "glue-joints", "glue-ups", "glue-minutes", "truing", "hollow", "hollow-in-sections"]),
        new("At the lathe", """
            Speeds are the lower of two: what joints and wood bear, and what the rim-speed rule of the trade allows. Both are upper limits for sound work; the lathe's manual comes first.
            """, ["swing", "mass", "unbalance", "unbalance-force", "speed-joints", "speed-blank", "speed-round", "holding", "holding-length", "holding-bears", "centre-within", "cuts-outside", "cuts-inside", "finish-allowance", "wall-roughed", "wall-finished", "bore", "bore-drill", "bore-point", "bore-depth", "hollow-depth", "mouth", "tool-shank"]),
    ];
}
