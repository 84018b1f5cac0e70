namespace Ringwright.Web.Bench.Fields;

/// <summary>The values typed for a ring. Keys are the file's field names.</summary>
public static class RingFields
{
    /// <summary>Its name.</summary>
    public static Field Name { get; } = new("name", "Name", FieldKind.Words, "Unique in the piece");

    /// <summary>Number of segments.</summary>
    public static Field Segments { get; } = new("segments", "Segments", FieldKind.WholeNumber, "3 to 360, all alike");

    /// <summary>Diameter to be turned.</summary>
    public static Field Diameter { get; } = new("diameter", "Diameter", FieldKind.Length, "Turned size, outside");

    /// <summary>Inner diameter to be turned.</summary>
    public static Field InnerDiameter { get; } = new("innerDiameter", "Inner diameter", FieldKind.Length, "Turned size, inside");

    /// <summary>Height of the glued ring.</summary>
    public static Field Thickness { get; } = new("thickness", "Height", FieldKind.Length, "Along the lathe’s axis");

    /// <summary>Flat left at the tip.</summary>
    public static Field Tip { get; } = new("tip", "Tip", FieldKind.Length, "Flat left on each wedge", "a point");

    /// <summary>Width of a board that is already ripped.</summary>
    public static Field BoardWidth { get; } = new("boardWidth", "Board width", FieldKind.Length, "Already ripped; the tip follows", "as needed");

    /// <summary>Diameter of the bore.</summary>
    public static Field Bore { get; } = new("bore", "Bore", FieldKind.Length, "Pen tube or arbor", "not bored");

    /// <summary>Wood left for turning, on the radius.</summary>
    public static Field Allowance { get; } = new("allowance", "Left for turning", FieldKind.Length, "Extra wood on the radius", "as in the shop");

    /// <summary>Turn against the pattern.</summary>
    public static Field Shift { get; } = new("shift", "Turned by", FieldKind.Number, "Segments; 0.5 lays it like bricks");

    /// <summary>Angle between open segments.</summary>
    public static Field Gap { get; } = new("gap", "Gap", FieldKind.Angle, "Open angle between two segments");

    /// <summary>Lean of staves.</summary>
    public static Field Lean { get; } = new("lean", "Lean", FieldKind.Angle, "From upright; above 0 wider at the top", "as the shape leans");

    /// <summary>Slant of a laminated board's lines.</summary>
    public static Field Recut { get; } = new("recut", "Slant of the lines", FieldKind.Angle, "From upright, seen outside");

    /// <summary>How often parts go around.</summary>
    public static Field Repeats { get; } = new("repeats", "Times around", FieldKind.WholeNumber, "How often the parts repeat");

    /// <summary>Name of the flat board.</summary>
    public static Field Board { get; } = new("board", "Flat board", FieldKind.Words, "Rings of one name come from one board");

    /// <summary>Wood of a solid layer.</summary>
    public static Field Wood { get; } = new("wood", "Wood", FieldKind.Wood, "One piece of it");
}
