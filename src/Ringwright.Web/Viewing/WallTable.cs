using Ringwright.Core.Turning;

namespace Ringwright.Web.Viewing;

/// <summary>Radii of the turned wall at even steps from the bottom up, mm: for shadows.</summary>
internal sealed record WallTable(double Bottom, double Top, float[] Outer, float[] Inner)
{
    private const int Steps = 256;

    public static WallTable Of(TurnedPiece piece)
    {
        WallLevel[] levels = [.. piece.Rings.SelectMany(r => r.Section.Levels)];
        (double bottom, double top) = (levels[0].Z, levels[^1].Z);
        float[] outer = new float[Steps], inner = new float[Steps];
        for (int i = 0, at = 0; i < Steps; i++)
        {
            double z = bottom + ((top - bottom) * (i + 0.5) / Steps);
            while (at < levels.Length - 2 && levels[at + 1].Z < z) at++;
            (WallLevel a, WallLevel b) = (levels[at], levels[at + 1]);
            double t = b.Z > a.Z ? Math.Clamp((z - a.Z) / (b.Z - a.Z), 0, 1) : 0;
            outer[i] = (float)Math.Round(a.Outer + (t * (b.Outer - a.Outer)), 3);
            inner[i] = (float)Math.Round(a.Inner + (t * (b.Inner - a.Inner)), 3);
        }

        return new(bottom, top, outer, inner);
    }
}
