namespace Ringwright.Core.Sawing;

/// <summary>What made a face of a sawn piece: the tags of the solids in a <see cref="SawRun"/>.</summary>
public static class FaceTag
{
    /// <summary>The board's end before sawing.</summary>
    public const int SawnEnd = 0;

    /// <summary>The board's other end.</summary>
    public const int FarEnd = 1;

    /// <summary>Edge 1 of the board.</summary>
    public const int Edge1 = 2;

    /// <summary>Edge 2 of the board.</summary>
    public const int Edge2 = 3;

    /// <summary>The board's bottom.</summary>
    public const int Bottom = 4;

    /// <summary>The board's top.</summary>
    public const int Top = 5;

    /// <summary>A joint face trued on the disc sander.</summary>
    public const int Trued = 6;

    /// <summary>A joint face sanded by hand.</summary>
    public const int Sanded = 7;

    /// <summary>A facet of an edge rounded by sanding.</summary>
    public const int Rounded = 8;

    private const int FirstCut = 16;

    /// <summary>The sawn face left by the cut with this number, on the wedge that fell as well as on the board.</summary>
    public static int Cut(int number) => FirstCut + number;

    internal static int Of(BoardEdge edge) => edge == BoardEdge.Edge1 ? Edge1 : Edge2;
}
