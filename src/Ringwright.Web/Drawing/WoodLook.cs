using System.Globalization;
using Ringwright.Core.Timber;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Web.Drawing;

/// <summary>How one wood is drawn on this sheet: colour, and a line pattern that no other wood of the ring has (as long as patterns last).</summary>
/// <param name="Name">The wood's name as it was given.</param>
/// <param name="Hex">Colour as #rrggbb.</param>
/// <param name="Mark">Number of the line pattern, 0 (blank) to 5.</param>
public sealed record WoodLook(string Name, string Hex, int Mark)
{
    /// <summary>Dark woods get light lines, light woods dark ones.</summary>
    public string Line => Brightness() < 0.45 ? "#fff4e2" : "#2b1d10";

    /// <summary>Looks for the different woods in <paramref name="names"/>, in the order they first appear.</summary>
    /// <param name="names">Names of woods, as often as they come.</param>
    /// <param name="table">The woods that are known; the library's when absent.</param>
    /// <param name="aged">As they look after years in the light, instead of fresh.</param>
    public static ImmutableArray<WoodLook> For(IEnumerable<string> names, SpeciesTable? table = null, bool aged = false)
    {
        table ??= SpeciesTable.Standard;
        var looks = ImmutableArray.CreateBuilder<WoodLook>();
        foreach (string name in names.Distinct(StringComparer.OrdinalIgnoreCase))
        {
            Species wood = table.FindOrAssume(name);
            int mark = wood.Mark;
            for (int tried = 0; tried < Wood.Marks && looks.Any(l => l.Mark == mark); tried++) mark = (mark + 1) % Wood.Marks;
            looks.Add(new(name, aged ? new Lab(wood.Aged.L, wood.Aged.A, wood.Aged.B).ToLinear().ToSrgb().ToString() : wood.Hex, mark));
        }

        return looks.ToImmutable();
    }

    private double Brightness()
    {
        double Channel(int at) => int.Parse(Hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return (0.299 * Channel(1)) + (0.587 * Channel(3)) + (0.114 * Channel(5));
    }
}
