namespace Ringwright.Web.Bench;

/// <summary>The values typed for a ring. Keys are the file's field names.</summary>
public static class RingFields
{
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
    public static Field BoardWidth { get; } = new("boardWidth", "Board width", FieldKind.Length, "Already ripped; the tip follows");

    /// <summary>Diameter of the bore.</summary>
    public static Field Bore { get; } = new("bore", "Bore", FieldKind.Length, "Pen tube or arbor", "not bored");

    /// <summary>Wood left for turning, on the radius.</summary>
    public static Field Allowance { get; } = new("allowance", "Left for turning", FieldKind.Length, "Extra wood on the radius", "as in the shop");

    /// <summary>All of them that are texts; woods are a list of their own.</summary>
    public static ImmutableArray<Field> All { get; } = [Segments, Diameter, InnerDiameter, Thickness, Tip, BoardWidth, Bore, Allowance];
}
