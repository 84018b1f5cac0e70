using Ringwright.Core.Geometry;

namespace Ringwright.Paper.Drawings;

/// <summary>An upright rectangle on the paper, mm, y downwards.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Top edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>Right edge.</summary>
    public double Right => X + Width;

    /// <summary>Bottom edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>The middle.</summary>
    public Vector2D Centre => new(X + (Width / 2), Y + (Height / 2));

    /// <summary>The top left corner.</summary>
    public Vector2D TopLeft => new(X, Y);

    /// <summary>The least box around points.</summary>
    public static Box Around(IReadOnlyCollection<Vector2D> points)
    {
        double x = points.Min(p => p.X), y = points.Min(p => p.Y);
        return new(x, y, points.Max(p => p.X) - x, points.Max(p => p.Y) - y);
    }

    /// <summary>The box with <paramref name="margin"/> mm taken off every side.</summary>
    public Box Inset(double margin) => new(X + margin, Y + margin, Width - (2 * margin), Height - (2 * margin));

    /// <summary>The upper part of the given height, mm.</summary>
    public Box Top(double height) => this with { Height = height };

    /// <summary>What is left below the upper part of the given height, mm.</summary>
    public Box Below(double height) => this with { Y = Y + height, Height = Height - height };

    /// <summary>What is left of the box right of the given width, mm.</summary>
    public Box After(double width) => this with { X = X + width, Width = Width - width };

    /// <summary>Whether the boxes share more than <paramref name="slack"/> mm in both directions.</summary>
    public bool Overlaps(Box other, double slack = 1e-6) =>
        Math.Min(Right, other.Right) - Math.Max(X, other.X) > slack
        && Math.Min(Bottom, other.Bottom) - Math.Max(Y, other.Y) > slack;

    /// <summary>Whether the other box lies inside, to within <paramref name="slack"/> mm.</summary>
    public bool Contains(Box other, double slack = 1e-6) =>
        other.X >= X - slack && other.Y >= Y - slack && other.Right <= Right + slack && other.Bottom <= Bottom + slack;
}
