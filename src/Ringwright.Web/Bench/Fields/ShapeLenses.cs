using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of the outline: its points, its inside, and what the chuck holds.</summary>
public static class ShapeLenses
{
    /// <summary>How refusals name the outer curve.</summary>
    public const string OuterCurve = "outer curve";

    /// <summary>How refusals name a drawn inside.</summary>
    public const string InnerCurve = "inner curve";

    private static readonly Field Diameter = new("diameter", "Diameter", FieldKind.Length, "");
    private static readonly Field Height = new("height", "Height", FieldKind.Length, "");

    /// <summary>All of them; none when the piece has no shape.</summary>
    public static IEnumerable<Lens> Of(Work work)
    {
        ArgumentNullException.ThrowIfNull(work);
        return work.Piece.Shape is Shape shape ? [.. Outer(shape), .. Inside(shape), .. Holding(shape)] : [];
    }

    /// <summary>The fields of the outer curve's points.</summary>
    public static IEnumerable<Lens> Outer(Shape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return shape.Outer.SelectMany((_, i) => Point(OuterCurve, "outer", i, s => s.Outer, (s, points) => s with { Outer = points }));
    }

    /// <summary>The fields of the inside.</summary>
    public static IEnumerable<Lens> Inside(Shape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        switch (shape.Inside)
        {
            case Wall wall:
                yield return Of<Wall, Length>("wall, ", new("thickness", "Wall", FieldKind.Length, "Square to the outside"), Codecs.Length, w => w.Thickness, (w, v) => w with { Thickness = v });
                yield return Of<Wall, Length?>("", new("floor", "Floor up to", FieldKind.Length, "Above the bottom", "open through"), Codecs.Length.OrBlank(), w => w.Floor, (w, v) => w with { Floor = v });
                if (wall.Along.IsDefaultOrEmpty) yield break;
                for (int i = 0; i < wall.Along.Length; i++)
                    foreach (Lens lens in Along(i)) yield return lens;
                break;
            case Bore:
                yield return Of<Bore, Length>("bore, ", new("diameter", "Bore", FieldKind.Length, "Straight, along the axis"), Codecs.Length, b => b.Diameter, (b, v) => b with { Diameter = v });
                yield return Of<Bore, Length?>("", new("floor", "Down to", FieldKind.Length, "Above the bottom", "right through"), Codecs.Length.OrBlank(), b => b.Floor, (b, v) => b with { Floor = v });
                yield return Of<Bore, Length?>("bore, ", new("tube", "Tube glued in", FieldKind.Length, "Its length", "no tube"), Codecs.Length.OrBlank(), b => b.Tube, (b, v) => b with { Tube = v });
                yield return Of<Bore, Length?>("bore, ", new("endTrim", "Trimmed at each end", FieldKind.Length, "Flush with the tube", "nothing"), Codecs.Length.OrBlank(), b => b.EndTrim, (b, v) => b with { EndTrim = v });
                break;
            case Hollow hollow:
                foreach (Lens lens in hollow.Points.SelectMany((_, i) => Point(InnerCurve, "inner", i, s => ((Hollow)s.Inside!).Points, (s, points) => s with { Inside = (Hollow)s.Inside! with { Points = points } })))
                    yield return lens;
                break;
            default: break;
        }
    }

    /// <summary>The fields of tenon or recess.</summary>
    public static IEnumerable<Lens> Holding(Shape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        if (shape.Holding is not Holding holding) return [];
        var place = new Place(Station.Shape, work => work.Piece.Shape?.Holding?.Kind == HoldingKind.Recess ? "recess, " : "tenon, ", "holding-");
        Lens Of(Field field, Func<Holding, Length> get, Func<Holding, Length, Holding> set) => Lens.Of(place, field, Codecs.Length,
            w => get(w.Piece.Shape!.Holding!), (w, v) => w.WithShape(w.Piece.Shape! with { Holding = set(w.Piece.Shape.Holding!, v) }));
        bool tenon = holding.Kind == HoldingKind.Tenon;
        return
        [
            Of(new("diameter", tenon ? "Tenon" : "Recess", FieldKind.Length, "Its diameter"), h => h.Diameter, (h, v) => h with { Diameter = v }),
            Of(new("length", tenon ? "Tenon’s length" : "Recess’s depth", FieldKind.Length, tenon ? "Below the bottom" : "Into the bottom"), h => h.Length, (h, v) => h with { Length = v }),
        ];
    }

    private static IEnumerable<Lens> Along(int i)
    {
        Lens Of(Field field, Func<WallPoint, Length> get, Func<WallPoint, Length, WallPoint> set) => Of<Wall, Length>($"wall, along {i + 1}, ", field, Codecs.Length,
            w => get(w.Along[i]), (w, v) => w with { Along = w.Along.SetItem(i, set(w.Along[i], v)) });
        yield return Of(new("height", "At height", FieldKind.Length, "Above the bottom"), p => p.Height, (p, v) => p with { Height = v });
        yield return Of(new("thickness", "Wall there", FieldKind.Length, "Even in between"), p => p.Thickness, (p, v) => p with { Thickness = v });
    }

    private static Lens Of<TInside, T>(string prefix, Field field, Codec<T> codec, Func<TInside, T> get, Func<TInside, T, Inside> set)
        where TInside : Inside => Lens.Of(new(Station.Shape, _ => prefix, "inside-" + prefix), field, codec,
            w => get((TInside)w.Piece.Shape!.Inside!), (w, v) => w.WithShape(w.Piece.Shape! with { Inside = set((TInside)w.Piece.Shape.Inside!, v) }));

    private static IEnumerable<Lens> Point(string curve, string id, int i, Func<Shape, ImmutableArray<ShapePoint>> get, Func<Shape, ImmutableArray<ShapePoint>, Shape> set)
    {
        var place = new Place(Station.Shape, _ => $"{curve}, point {i + 1}, ", $"{id}-{i + 1}-");
        Lens Of(Field field, Func<ShapePoint, Length> read, Func<ShapePoint, Length, ShapePoint> write) => Lens.Of(place, field, Codecs.Length, w => read(get(w.Piece.Shape!)[i]), (w, v) =>
        {
            ImmutableArray<ShapePoint> points = get(w.Piece.Shape!);
            return w.WithShape(set(w.Piece.Shape!, points.SetItem(i, write(points[i], v))));
        });
        yield return Of(Diameter, p => p.Diameter, (p, v) => p with { Diameter = v });
        yield return Of(Height, p => p.Height, (p, v) => p with { Height = v });
    }
}
