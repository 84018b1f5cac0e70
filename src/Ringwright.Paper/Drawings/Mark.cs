using Ringwright.Core.Geometry;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Drawings;

/// <summary>One thing on the paper.</summary>
public abstract record Mark
{
    private Mark()
    {
    }

    /// <summary>A line drawn along a shape.</summary>
    public sealed record Stroke(Outline Outline, Pen Pen) : Mark;

    /// <summary>A shape filled with an ink.</summary>
    public sealed record Fill(Outline Outline, Colour Colour) : Mark;

    /// <summary>A line of text.</summary>
    /// <param name="Line">The text, measured.</param>
    /// <param name="At">Where its anchor stands, mm.</param>
    /// <param name="Anchor">Which of its points that is.</param>
    /// <param name="Angle">Turned around the anchor, radians, positive clockwise as seen.</param>
    public sealed record Text(TextLine Line, Vector2D At, Anchor Anchor, double Angle) : Mark
    {
        /// <summary>Start of the baseline before turning, from the anchor, mm.</summary>
        public Vector2D Origin => new(-Anchor.X * Line.Width, Anchor.Y * Line.Style.Height);

        /// <summary>The upright box around the text, from the top of capitals to the descender, mm.</summary>
        public Box Bounds
        {
            get
            {
                TextStyle style = Line.Style;
                Box level = new(Origin.X, Origin.Y - style.Height, Line.Width, style.Height + style.Descent);
                Vector2D[] corners =
                    [level.TopLeft, new(level.Right, level.Y), new(level.X, level.Bottom), new(level.Right, level.Bottom)];
                return Box.Around([.. corners.Select(corner => At + corner.Rotated(Angle))]);
            }
        }
    }

    /// <summary>Another drawing, placed and perhaps stretched.</summary>
    /// <param name="Child">The drawing.</param>
    /// <param name="At">Where its origin stands, mm.</param>
    /// <param name="ScaleX">Stretch across.</param>
    /// <param name="ScaleY">Stretch down.</param>
    public sealed record Placed(Drawing Child, Vector2D At, double ScaleX, double ScaleY) : Mark
    {
        /// <summary>Name of the layer that the child's marks are on, where a file has layers; null for that of the parent.</summary>
        public string? Layer { get; init; }

        /// <summary>A box of the child as it lies in the parent, mm.</summary>
        public Box ToParent(Box box) =>
            new(At.X + (ScaleX * box.X), At.Y + (ScaleY * box.Y), ScaleX * box.Width, ScaleY * box.Height);
    }
}
