using System.Text.Json.Serialization;

namespace Ringwright.Web.Floor;

/// <summary>What was marked at the saw.</summary>
public enum MarkKind
{
    /// <summary>A good wedge fell.</summary>
    Sawn,

    /// <summary>A wedge fell and is lost: flung, chipped, burnt.</summary>
    Lost,

    /// <summary>A wedge that was counted as good is found bad later.</summary>
    Bad,

    /// <summary>A new board was begun.</summary>
    Board,

    /// <summary>An earlier mark was taken back.</summary>
    Undone,

    /// <summary>Cuts were added to the record.</summary>
    Recorded,

    /// <summary>The wedges counted before are of an earlier plan: counting begins anew.</summary>
    Cleared,
}

/// <summary>
/// One tap at the saw. Marks are only ever added, each with a name of its own, so that a tablet that was away can send them
/// again without counting twice.
/// </summary>
/// <param name="Id">Its own name.</param>
/// <param name="Cut">Which wedges it is about: <see cref="SawCut.Key"/>.</param>
/// <param name="Kind">What was marked.</param>
/// <param name="At">When, milliseconds since 1970 by the clock of the one who tapped.</param>
/// <param name="Of">The mark that is taken back.</param>
public sealed record Mark(string Id, string Cut, MarkKind Kind, long At, string? Of = null)
{
    /// <summary>Cuts that were added to the record; null in marks of an earlier version, which meant all before.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? Cuts { get; init; }

    /// <summary>Of these lost.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? Lost { get; init; }
}
