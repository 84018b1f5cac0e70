using System.Globalization;

namespace Ringwright.Paper.Sheets;

/// <summary>The scale of a picture: one of the preferred scales of ISO 5455.</summary>
public readonly record struct DrawingScale
{
    private static readonly int[] Preferred = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    private readonly int _enlarged;
    private readonly double _reduced;

    private DrawingScale(int enlarged, double reduced) => (_enlarged, _reduced) = (enlarged, reduced);

    /// <summary>1:1.</summary>
    public static DrawingScale True { get; } = new(1, 1);

    /// <summary>The preferred scales from 10:1 to 1:1000.</summary>
    public static IReadOnlyList<DrawingScale> LargestFirst { get; } =
    [
        .. Preferred.Where(n => n is > 1 and <= 10).Reverse().Select(n => new DrawingScale(n, 1)),
        .. Preferred.Select(n => new DrawingScale(1, n)),
    ];

    /// <summary>
    /// The same with 1:2.5, 1:3 and 1:4 between them, for a picture of the whole, which a preferred scale would often make half as large
    /// as its sheet. ISO 5455 lets intermediate scales be chosen where the recommended ones do not serve.
    /// </summary>
    public static IReadOnlyList<DrawingScale> WithBetween { get; } = [.. LargestFirst.Concat([new(1, 2.5), new(1, 3), new(1, 4)]).OrderByDescending(s => s.Ratio)];

    /// <summary>Paper over workshop.</summary>
    public double Ratio => _enlarged / _reduced;

    /// <summary>The largest preferred scale, from 10:1 to 1:1000, at which a size fits a room.</summary>
    /// <param name="size">Size in the workshop, mm.</param>
    /// <param name="room">Room on the paper, mm.</param>
    /// <exception cref="LayoutException">It does not even fit at 1:1000.</exception>
    public static DrawingScale Largest(double size, double room)
    {
        foreach (DrawingScale scale in LargestFirst)
        {
            if (scale.Ratio * size <= room)
                return scale;
        }

        throw new LayoutException("The picture at 1:1000", size / 1000, room);
    }

    /// <summary>As written in a title block: 2:1.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{_enlarged}:{_reduced:0.##}");
}
