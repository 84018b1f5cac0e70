using System.Text.RegularExpressions;
using Ringwright.Core.Measures;

namespace Ringwright.Web.Bench.Fields;

/// <summary>Where fields of one thing belong.</summary>
/// <param name="Station">The station that shows them.</param>
/// <param name="Prefix">How the library names the thing, before the field's name: <c>ring Foot, </c>.</param>
/// <param name="IdPrefix">The same for ids on the page, where names that change are no use.</param>
/// <param name="Ring">Index of the ring they belong to, if any.</param>
public sealed record Place(Station Station, Func<Work, string> Prefix, string IdPrefix = "", int? Ring = null)
{
    /// <summary>Address of the page that shows them.</summary>
    public string Url { get; init; } = Station.Url();
}

/// <summary>One value of the work: how it is shown as text, and how text is put back. Immutable.</summary>
public sealed partial class Lens
{
    private readonly Func<Work, string> _read;
    private readonly Func<Work, string, LengthUnit, (Work Work, ParseError? Error)> _write;

    private Lens(Place place, Field field, Func<Work, string> read, Func<Work, string, LengthUnit, (Work, ParseError?)> write) =>
        (Place, Field, _read, _write) = (place, field, read, write);

    /// <summary>Where it belongs.</summary>
    public Place Place { get; }

    /// <summary>What is typed.</summary>
    public Field Field { get; }

    /// <summary>The input's id on the page.</summary>
    public string Id => "field-" + NotOfIds().Replace(Place.IdPrefix + Field.Key, "-");

    /// <summary>Makes a lens.</summary>
    /// <param name="place">Where it belongs.</param>
    /// <param name="field">What is typed.</param>
    /// <param name="codec">How its value is written.</param>
    /// <param name="get">Takes the value out.</param>
    /// <param name="set">Puts it in.</param>
    public static Lens Of<T>(Place place, Field field, Codec<T> codec, Func<Work, T> get, Func<Work, T, Work> set)
    {
        ArgumentNullException.ThrowIfNull(codec);
        string Read(Work work) => codec.Print(get(work));
        return new(place, field, Read, (work, text, unit) =>
            // A value from a file may have more digits than are shown; text that is as it was keeps them.
            text == Read(work) ? (work, null)
            : codec.Read(text, unit, out T? value, out ParseError? error) ? (set(work, value!), null) : (work, error));
    }

    /// <summary>Where it is in <paramref name="work"/>, as refusals of the library name the place.</summary>
    public string AddressIn(Work work) => Place.Prefix(work) + Field.Key;

    /// <summary>The value as a person would type it.</summary>
    public string Read(Work work) => _read(work);

    /// <summary>The work with the typed value, or as it was and what is wrong with the text.</summary>
    public (Work Work, ParseError? Error) Write(Work work, string text, LengthUnit unit) => _write(work, text, unit);

    [GeneratedRegex("[^A-Za-z0-9]+")]
    private static partial Regex NotOfIds();
}
