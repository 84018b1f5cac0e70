using System.Globalization;
using System.Text;
using Ringwright.Core.Geometry;

namespace Ringwright.Paper.Output;

/// <summary>Pairs of group code and value, as a DXF file is made of; points are turned from y down to y up.</summary>
/// <param name="height">Height of the drawing, mm.</param>
internal sealed class DxfText(double height)
{
    private readonly StringBuilder _text = new();

    public DxfText Add(int code, string value)
    {
        _text.Append(CultureInfo.InvariantCulture, $"{code,3}\r\n{value.ReplaceLineEndings(" ")}\r\n");
        return this;
    }

    public DxfText Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    // Always with a decimal point, a millionth of a millimetre fine.
    public DxfText Add(int code, double value) => Add(code, (Math.Round(value, 9) + 0.0).ToString("0.0########", CultureInfo.InvariantCulture));

    public DxfText Entity(string name, string layer) => Add(0, name).Add(8, layer);

    /// <summary>A point: x under its code, y and z under those ten and twenty higher.</summary>
    public DxfText Point(int code, Vector2D paper) => Add(code, paper.X).Add(code + 10, height - paper.Y).Add(code + 20, 0.0);

    public override string ToString() => _text.ToString();
}
