using System.Globalization;
using Ringwright.Core.Geometry;

namespace Ringwright.Web.Drawing;

/// <summary>Numbers and points as SVG text. SVG's y runs down, the plan's up; <see cref="Points"/> turns it over.</summary>
internal static class Svg
{
    public static string N(double value) => Math.Round(value, 3).ToString("0.###", CultureInfo.InvariantCulture);

    public static string Points(ConvexPolygon polygon, double scale) =>
        string.Join(' ', polygon.Vertices.Select(v => N(v.X * scale) + "," + N(-v.Y * scale)));

    /// <summary>A printed length for a drawing: there is no room for the decimals behind a fraction, unless the fraction is nought.</summary>
    public static string Short(string printed)
    {
        int bracket = printed.LastIndexOf(" (", StringComparison.Ordinal);
        if (bracket < 0) return printed;
        return printed.StartsWith("≈ 0 ", StringComparison.Ordinal) ? printed[(bracket + 2)..^1] + " in" : printed[..bracket];
    }
}
