namespace Ringwright.Core.Patterns.Pictures;

/// <summary>A rectangle in a picture, pixels from its left and upper edge; not empty.</summary>
internal readonly record struct PixelBox(double Left, double Top, double Right, double Bottom)
{
    public double Area => (Right - Left) * (Bottom - Top);
}

/// <summary>From places on the unrolled surface to places in the picture.</summary>
internal sealed class PictureMap
{
    private readonly PixelPicture _picture;
    private readonly Lattice _lattice;
    private readonly PicturePlacement _placement;
    private readonly double _pixelsPerTurn, _pixelsPerMillimetre;

    public PictureMap(PixelPicture picture, Lattice lattice, PicturePlacement placement)
    {
        (_picture, _lattice, _placement) = (picture, lattice, placement);
        double width = placement.Angle * lattice.MeanRadius; // of the space for the picture, mm
        double across = picture.Width / width, up = picture.Height / lattice.Height; // pixels per mm if stretched
        (double x, double y) = placement.Sizing switch
        {
            PictureSizing.Around => (across, across),
            PictureSizing.Whole => (Math.Max(across, up), Math.Max(across, up)),
            PictureSizing.Cover => (Math.Min(across, up), Math.Min(across, up)),
            _ => (across, up),
        };
        (_pixelsPerTurn, _pixelsPerMillimetre) = (x * 2 * Math.PI * lattice.MeanRadius, y);
    }

    /// <summary>The cell's size in pixels², also where it lies outside the picture.</summary>
    public double CellArea(int ring) => _pixelsPerTurn / _lattice.Rings[ring].Segments * _lattice.Rings[ring].Height * _pixelsPerMillimetre;

    /// <summary>
    /// What a cell sees of the picture: nothing beside it, one rectangle as a rule, two where both ends of a wrapped picture
    /// meet in the cell.
    /// </summary>
    /// <param name="ring">Ring from 0.</param>
    /// <param name="segment">Segment from 0.</param>
    /// <param name="bottom">Height of the ring's lower edge above the piece's bottom, mm.</param>
    public IEnumerable<PixelBox> Boxes(int ring, int segment, double bottom)
    {
        double middle = (_lattice.Height / 2) + _placement.Lift;
        double below = (_picture.Height / 2.0) + ((middle - bottom) * _pixelsPerMillimetre);
        double above = below - (_lattice.Rings[ring].Height * _pixelsPerMillimetre);
        (double top, double end) = (Math.Max(0, above), Math.Min(_picture.Height, below));
        if (end <= top) yield break;

        (double from, double to) = _lattice.Span(ring, segment);
        double turns = (from + to) / 2 - (_placement.Middle / (2 * Math.PI));
        double offset = turns - Math.Round(turns) - ((from + to) / 2); // the cell's middle within half a turn of the picture's
        for (int copy = -1; copy <= 1; copy++)
            if (Across(from + offset + copy, to + offset + copy) is var (left, right) && right > left)
                yield return new(left, top, right, end);
    }

    // Turns from the picture's middle to pixels, cut to the picture and to the angle it is wrapped over.
    private (double Left, double Right) Across(double from, double to)
    {
        double half = Math.Min(_picture.Width / 2.0, _placement.Angle / (4 * Math.PI) * _pixelsPerTurn);
        double left = Math.Clamp(from * _pixelsPerTurn, -half, half), right = Math.Clamp(to * _pixelsPerTurn, -half, half);
        if (_placement.FromInside) (left, right) = (-right, -left);
        return ((_picture.Width / 2.0) + left, (_picture.Width / 2.0) + right);
    }
}
