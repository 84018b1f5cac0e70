using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Gauges;

/// <summary>
/// A gauge as a closed solid of triangles, its name cut into the upper face. Every edge belongs to just two triangles. Lengths in mm;
/// the lower face is z = 0.
/// </summary>
public sealed class GaugeSolid
{
    private const double MostCell = 1.2, LeastCell = 0.6; // side of a letter's cell: below the least a printer closes it
    private const double Depth = 0.8;                     // of the letters

    private readonly ImmutableArray<Vector3D>.Builder _points = ImmutableArray.CreateBuilder<Vector3D>();
    private readonly ImmutableArray<int>.Builder _triangles = ImmutableArray.CreateBuilder<int>();
    private readonly Dictionary<(int Column, int Row, bool Low), int> _nodes = [];
    private readonly GaugeShape _shape;
    private readonly bool[,] _cut;
    private readonly double _cell;
    private readonly Vector2D _corner;

    private GaugeSolid(GaugeShape shape)
    {
        _shape = shape;
        Written = Fitting(shape);
        _cut = PanelLetters.Of(Written);
        _cell = Cell(shape, Written);
        _corner = shape.Panel.Corner + new Vector2D((shape.Panel.Width - (Columns * _cell)) / 2, (shape.Panel.Height - (Rows * _cell)) / 2);
        int[] lower = [.. shape.Outline.Vertices.Select(p => Add(new(p.X, p.Y, 0)))];
        int[] upper = [.. shape.Outline.Vertices.Select(p => Add(new(p.X, p.Y, shape.Thickness)))];
        for (int i = 1; i + 1 < lower.Length; i++) Triangle(lower[0], lower[i + 1], lower[i]);
        for (int i = 0; i < lower.Length; i++) Square(lower[i], lower[(i + 1) % lower.Length], upper[(i + 1) % lower.Length], upper[i]);
        Around(upper);
        Letters();
        (Points, Triangles) = (_points.DrainToImmutable(), _triangles.DrainToImmutable());
    }

    /// <summary>Its corners.</summary>
    public ImmutableArray<Vector3D> Points { get; }

    /// <summary>Three corners for each triangle, counter-clockwise seen from outside.</summary>
    public ImmutableArray<int> Triangles { get; }

    /// <summary>What is written on it: as much of the engraving as has room, its end first.</summary>
    public string Written { get; }

    /// <summary>Its volume by its shape, mm³: plate less letters.</summary>
    public double ShapeVolume => (_shape.Outline.Area * _shape.Thickness) - (_cut.Cast<bool>().Count(c => c) * _cell * _cell * Depth);

    /// <summary>Its volume by its triangles, mm³ (divergence theorem).</summary>
    public double Volume
    {
        get
        {
            double six = 0;
            for (int i = 0; i < Triangles.Length; i += 3) six += Points[Triangles[i]].Dot(Points[Triangles[i + 1]].Cross(Points[Triangles[i + 2]]));
            return six / 6;
        }
    }

    private int Columns => _cut.GetLength(0);

    private int Rows => _cut.GetLength(1);

    /// <summary>The solid of a gauge.</summary>
    public static GaugeSolid Of(GaugeShape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return new(shape);
    }

    /// <summary>Coordinates in single precision, as printers' files hold them: x, y, z of every corner.</summary>
    public float[] Positions() => [.. Points.SelectMany(p => new[] { (float)p.X, (float)p.Y, (float)p.Z })];

    // Words are left out from the front until the rest has room; the angle stands last.
    private static string Fitting(GaugeShape shape)
    {
        string text = PanelLetters.Plain(shape.Engraving);
        while (text.Length > 1 && Cell(shape, text) < LeastCell)
        {
            int space = text.IndexOf(' ', StringComparison.Ordinal);
            text = space < 0 ? text[1..] : text[(space + 1)..].TrimStart();
        }

        return text;
    }

    private static double Cell(GaugeShape shape, string text) =>
        Math.Min(MostCell, Math.Min(shape.Panel.Width / PanelLetters.Columns(text), shape.Panel.Height / PanelLetters.Rows));

    // The upper face around the rectangle of letters. From an outer corner beyond a side's line the whole side is seen; between two
    // such corners the rectangle's corner sees all outer corners.
    private void Around(int[] upper)
    {
        (Vector2D Outward, int[] Nodes)[] sides =
        [
            (new(0, -1), [.. Enumerable.Range(0, Columns + 1).Select(c => Node(c, 0, false))]),
            (new(1, 0), [.. Enumerable.Range(0, Rows + 1).Select(r => Node(Columns, r, false))]),
            (new(0, 1), [.. Enumerable.Range(0, Columns + 1).Select(c => Node(Columns - c, Rows, false))]),
            (new(-1, 0), [.. Enumerable.Range(0, Rows + 1).Select(r => Node(0, Rows - r, false))]),
        ];
        int[] seen = [.. sides.Select(s => Farthest(s.Outward))];
        for (int s = 0; s < 4; s++)
        {
            int[] nodes = sides[s].Nodes;
            for (int i = 0; i + 1 < nodes.Length; i++) Triangle(upper[seen[s]], nodes[i + 1], nodes[i]);
            for (int v = seen[s]; v != seen[(s + 1) % 4]; v = (v + 1) % upper.Length) Triangle(nodes[^1], upper[v], upper[(v + 1) % upper.Length]);
        }
    }

    // The outer corner farthest along a direction; of two as far the first counter-clockwise.
    private int Farthest(Vector2D along)
    {
        ImmutableArray<Vector2D> corners = _shape.Outline.Vertices;
        double most = corners.Max(c => c.Dot(along));
        int[] far = [.. Enumerable.Range(0, corners.Length).Where(i => corners[i].Dot(along) >= most - 1e-9)];
        return far.First(i => !far.Contains((i + corners.Length - 1) % corners.Length));
    }

    private void Letters()
    {
        for (int c = 0; c < Columns; c++)
            for (int r = 0; r < Rows; r++)
            {
                bool low = _cut[c, r];
                Square(Node(c, r, low), Node(c + 1, r, low), Node(c + 1, r + 1, low), Node(c, r + 1, low));
                if (c + 1 < Columns && _cut[c + 1, r] != low) Step(c + 1, r, c + 1, r + 1, low);
                if (r + 1 < Rows && _cut[c, r + 1] != low) Step(c + 1, r + 1, c, r + 1, low);
            }
    }

    // The upright face between a cell on the left of a line and another on its right.
    private void Step(int c0, int r0, int c1, int r1, bool leftIsLow)
    {
        int low0 = Node(c0, r0, true), low1 = Node(c1, r1, true), high0 = Node(c0, r0, false), high1 = Node(c1, r1, false);
        if (leftIsLow) Square(high0, high1, low1, low0);
        else Square(low0, low1, high1, high0);
    }

    private int Node(int column, int row, bool low)
    {
        if (_nodes.TryGetValue((column, row, low), out int known)) return known;
        Vector2D at = _corner + new Vector2D(column * _cell, row * _cell);
        return _nodes[(column, row, low)] = Add(new(at.X, at.Y, _shape.Thickness - (low ? Depth : 0)));
    }

    private int Add(Vector3D point)
    {
        _points.Add(point);
        return _points.Count - 1;
    }

    private void Triangle(int a, int b, int c) => _triangles.AddRange(a, b, c);

    private void Square(int a, int b, int c, int d)
    {
        Triangle(a, b, c);
        Triangle(a, c, d);
    }
}
