using Ringwright.Paper.Blocks;

namespace Ringwright.Paper.Tests;

/// <summary>The texts of a sample packet: usual ones, and the longest that are plausible in either unit.</summary>
internal sealed record SampleValues(
    string Piece,
    string SheetName,
    string Units,
    string Outer,
    string Depth,
    IReadOnlyList<KeyFigure> Figures,
    IReadOnlyList<IReadOnlyList<string>> Settings)
{
    public IReadOnlyList<string> Steps { get; } =
    [
        "Mill the board, then check its thickness at both ends.",
        "Set the fence with the gauge; saw two test pieces from scrap and lay them on the true-scale sheet.",
        "Saw 26 wedges. Mark the face that is up before each one falls off.",
        "Dry-fit under a rubber band and look against the light.",
    ];

    public IReadOnlyList<string> Cautions { get; } =
    [
        "Read the manual of your saw first. It and your local rules come before this sheet.",
        "Small wedges are thrown: hold them with a stop and a stick, never with fingers.",
        "Fine dust harms the lungs: use extraction and a mask.",
    ];

    public static SampleValues Usual { get; } = new(
        "Pen disc", "Ring 1: maple and padauk", "inches, fractions to 1/64", "1 9/64\"", "1 3/4\"",
        [
            new("Segments", "24"),
            new("Stop distance", "1 3/8", "in", "from blade to stop"),
            new("Mitre on each fence", "7.5°", "", "two fences, the board stays face up"),
            new("Board to saw", "14 5/16", "in", "with kerf and squared ends"),
        ],
        [
            ["Fence offset at 12 in", "1 37/64\"", "ruler from the pivot"],
            ["Sine bar, 5 in", "0.6526\"", "stack of blocks"],
            ["Kerf", "3/32\"", "measured"],
            ["Centre opening", "1/16\"", "gone once drilled to 7 mm"],
        ]);

    public static SampleValues LongestInches { get; } = new(
        "Wedding anniversary platter with the double zigzag rim for Grandmother",
        "Ring 104: bubinga, holly, purpleheart, African blackwood and bloodwood",
        "inches, fractions to 1/64; angles in degrees",
        "123 63/64\"", "123 63/64\"",
        [
            new("Segments", "360"),
            new("Stop distance", "123 63/64", "in", "from the near side of the blade to the stop"),
            new("Mitre on each fence", "59.9999°", "", "two fences, the board stays face up"),
            new("Board to saw with kerf, squared ends and holding length", "1234 63/64", "in", "more than one board"),
        ],
        [
            ["Ruler offset of the left fence at 12 in from its pivot", "−123 63/64\"", "positive away from the blade"],
            ["Sine bar of 5 in, stack of blocks", "4.330127\"", "the nearest that a usual set can build"],
            ["Kerf", "63/64\"", "measured on test cuts"],
            ["Centre opening across corners", "1 1/64\"", "gone once it is drilled for the tube"],
        ]);

    public static SampleValues LongestMillimetres { get; } = LongestInches with
    {
        Units = "millimetres to 0.001; angles in degrees",
        Outer = "3149.225 mm",
        Depth = "3149.225 mm",
        Figures =
        [
            new("Segments", "360"),
            new("Stop distance", "3149.225", "mm", "from the near side of the blade to the stop"),
            new("Mitre on each fence", "59.9999°", "", "two fences, the board stays face up"),
            new("Board to saw with kerf, squared ends and holding length", "31367.594", "mm", "more than one board"),
        ],
        Settings =
        [
            ["Ruler offset of the left fence at 300 mm from its pivot", "−3149.225 mm", "positive away from the blade"],
            ["Sine bar of 127 mm, stack of blocks", "109.985 mm", "the nearest that a usual set can build"],
            ["Kerf", "25.003 mm", "measured on test cuts"],
            ["Centre opening across corners", "25.797 mm", "gone once it is drilled for the tube"],
        ],
    };
}
