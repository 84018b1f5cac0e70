using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Edits;

namespace Ringwright.Web.Stations;

/// <summary>The outline in numbers.</summary>
public partial class OutlineInputs
{
    private enum Kinds
    {
        Solid,
        Wall,
        Bore,
        Drawn,
    }

    private enum Holds
    {
        None,
        Tenon,
        Recess,
    }

    private Kinds Kind => Sheet.Good.Piece.Shape?.Inside switch
    {
        Wall => Kinds.Wall,
        Bore => Kinds.Bore,
        Hollow => Kinds.Drawn,
        _ => Kinds.Solid,
    };

    private Holds Held => Sheet.Good.Piece.Shape?.Holding?.Kind switch
    {
        HoldingKind.Tenon => Holds.Tenon,
        HoldingKind.Recess => Holds.Recess,
        _ => Holds.None,
    };

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..].Replace('-', ' ');

    private void Hollowed(Kinds kind) => Bench.Change(w => ShapeEdits.Inside(w, kind.ToString().ToLowerInvariant()));

    private void Hold(Holds held) => Bench.Change(w => ShapeEdits.Hold(w, held switch
    {
        Holds.Tenon => HoldingKind.Tenon,
        Holds.Recess => HoldingKind.Recess,
        _ => null,
    }));

    // The sizes the rings have now stay theirs.
    private void LeaveOutline() => Bench.Change(s => s.With(new Work(s.Good.Piece with { Shape = null, Kind = null, Rings = [.. s.Good.Rings.Select(r => r.Ring)] }, s.Good.Shop)));

    private void AddAlong() => Bench.Change(w => WithAlong(w, (wall, shape) =>
    {
        double top = shape.Outer[^1].Height.Millimetres;
        double last = wall.Along.IsDefaultOrEmpty ? shape.Outer[0].Height.Millimetres : wall.Along[^1].Height.Millimetres;
        WallPoint point = new() { Height = Length.FromMillimetres(Math.Round((last + top) / 2, 1)), Thickness = wall.Along.IsDefaultOrEmpty ? wall.Thickness : wall.Along[^1].Thickness };
        return wall.Along.IsDefaultOrEmpty ? [point] : wall.Along.Add(point);
    }));

    private void DropAlong() => Bench.Change(w => WithAlong(w, (wall, _) => wall.Along.Length > 1 ? wall.Along.RemoveAt(wall.Along.Length - 1) : default));

    private static Work WithAlong(Work work, Func<Wall, Shape, ImmutableArray<WallPoint>> change)
    {
        Shape shape = work.Piece.Shape!;
        var wall = (Wall)shape.Inside!;
        return work.WithShape(shape with { Inside = wall with { Along = change(wall, shape) } });
    }
}
