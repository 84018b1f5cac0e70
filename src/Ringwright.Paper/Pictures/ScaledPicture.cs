using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>Room for a picture on the paper.</summary>
/// <param name="Width">Across, mm.</param>
/// <param name="Height">Down, mm.</param>
public readonly record struct Room(double Width, double Height);

/// <summary>A picture in true geometry and the scale at which it is drawn.</summary>
/// <param name="Drawing">The picture, cut to what is on it.</param>
/// <param name="Scale">Paper over workshop.</param>
public sealed record ScaledPicture(Drawing Drawing, DrawingScale Scale)
{
    /// <summary>
    /// The picture at the largest preferred scale at which it fits, its letters (which do not scale) included.
    /// </summary>
    /// <param name="width">Width of the bare shape in the workshop, mm: larger scales are not even tried.</param>
    /// <param name="room">Room on the paper.</param>
    /// <param name="draw">Draws it at a scale, around any origin.</param>
    /// <param name="scales">The scales to choose from, the largest first; <see cref="DrawingScale.LargestFirst"/> when absent.</param>
    /// <exception cref="LayoutException">It does not fit even at the smallest scale.</exception>
    internal static ScaledPicture Largest(double width, Room room, Func<DrawingScale, Drawing> draw, IReadOnlyList<DrawingScale>? scales = null)
    {
        return First(width, room, draw, scales ?? DrawingScale.LargestFirst, out double needed) ?? throw new LayoutException("A picture", needed, room.Width);
    }

    /// <summary>The same of a picture whose many marks lie within a few others: the scale is found without them.</summary>
    /// <param name="width">As for <see cref="Largest(double, Room, Func{DrawingScale, Drawing}, IReadOnlyList{DrawingScale})"/>, like room and scales.</param>
    /// <param name="room">Room on the paper.</param>
    /// <param name="frame">Draws all that reaches farthest.</param>
    /// <param name="draw">Draws all.</param>
    /// <param name="scales">The scales to choose from, the largest first.</param>
    internal static ScaledPicture Largest(double width, Room room, Func<DrawingScale, Drawing> frame, Func<DrawingScale, Drawing> draw, IReadOnlyList<DrawingScale>? scales = null)
    {
        DrawingScale largest = Largest(width, room, frame, scales).Scale;
        return new(draw(largest).Cropped(), largest);
    }

    /// <summary>The picture at the first of some scales at which it fits; null where it fits at none.</summary>
    /// <param name="width">As for <see cref="Largest(double, Room, Func{DrawingScale, Drawing}, IReadOnlyList{DrawingScale})"/>, like room and draw.</param>
    /// <param name="room">Room on the paper.</param>
    /// <param name="draw">Draws it at a scale, around any origin.</param>
    /// <param name="scales">The scales to choose from, the largest first.</param>
    /// <param name="needed">Width of the last that was tried, or of the bare shape, mm.</param>
    internal static ScaledPicture? First(double width, Room room, Func<DrawingScale, Drawing> draw, IEnumerable<DrawingScale> scales, out double needed)
    {
        needed = width;
        foreach (DrawingScale scale in scales.Where(s => s.Ratio * width <= room.Width))
        {
            Drawing drawn = draw(scale).Cropped();
            needed = drawn.Width;
            if (drawn.Width <= room.Width && drawn.Height <= room.Height) return new(drawn, scale);
        }

        return null;
    }
}
