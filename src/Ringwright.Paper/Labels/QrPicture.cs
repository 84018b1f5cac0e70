using System.Collections;
using QRCoder;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Labels;

/// <summary>A QR code (ISO/IEC 18004) as a drawing, its free border of four modules included.</summary>
public static class QrPicture
{
    /// <summary>Draws a code.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="side">Its side, mm.</param>
    public static Drawing Draw(string text, double side)
    {
        using QRCodeData data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        double module = side / data.ModuleMatrix.Count;
        Drawing drawing = new(side, side);
        List<Outline> dark = [];
        for (int row = 0; row < data.ModuleMatrix.Count; row++)
            foreach ((int from, int to) in Runs(data.ModuleMatrix[row])) dark.Add(Outline.Rectangle(new(from * module, row * module, (to - from) * module, module)));
        return drawing.Fill(Outline.Join(dark), Colour.Black);
    }

    private static IEnumerable<(int From, int To)> Runs(BitArray row)
    {
        for (int from = 0; from < row.Length; from++)
        {
            if (!row[from]) continue;
            int to = from;
            while (to < row.Length && row[to]) to++;
            yield return (from, to);
            from = to;
        }
    }
}
