using System.Globalization;
using System.Text;
using Ringwright.Core.Geometry;

namespace Ringwright.Web.Drawing;

/// <summary>Numbers and points as SVG text. SVG's y runs down, the plan's up; points are turned over.</summary>
internal static class Svg
{
    public static string N(double value) => Math.Round(value, 3).ToString("0.###", CultureInfo.InvariantCulture);

    public static string Points(ConvexPolygon polygon, double scale) => Points(polygon.Vertices, scale);

    public static string Points(IEnumerable<Vector2D> points, double scale) =>
        string.Join(' ', points.Select(v => N(v.X * scale) + "," + N(-v.Y * scale)));

    /// <summary>Closed outlines as the data of one path, to <paramref name="digits"/> decimals.</summary>
    public static string Path(IEnumerable<ImmutableArray<Vector2D>> outlines, int digits = 2)
    {
        var path = new StringBuilder();
        string format = "0." + new string('#', digits);
        foreach (ImmutableArray<Vector2D> outline in outlines)
        {
            for (int i = 0; i < outline.Length; i++)
                path.Append(i == 0 ? 'M' : 'L').Append(outline[i].X.ToString(format, CultureInfo.InvariantCulture)).Append(' ').Append((-outline[i].Y).ToString(format, CultureInfo.InvariantCulture));
            path.Append('Z');
        }

        return path.ToString();
    }

    /// <summary>A printed length for a drawing: there is no room for the decimals behind a fraction, unless the fraction is nought.</summary>
    public static string Short(string printed)
    {
        int bracket = printed.LastIndexOf(" (", StringComparison.Ordinal);
        if (bracket < 0) return printed;
        return printed.StartsWith("≈ 0 ", StringComparison.Ordinal) ? printed[(bracket + 2)..^1] + " in" : printed[..bracket];
    }
}
