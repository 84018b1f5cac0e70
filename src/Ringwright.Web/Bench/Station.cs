namespace Ringwright.Web.Bench;

/// <summary>The six stations along the work.</summary>
public enum Station
{
    /// <summary>What it shall be.</summary>
    Shape,

    /// <summary>What it is made of.</summary>
    Timber,

    /// <summary>How it is sawn.</summary>
    Saw,

    /// <summary>Whether it closes.</summary>
    Fit,

    /// <summary>How it is glued.</summary>
    Glue,

    /// <summary>How it is turned.</summary>
    Lathe,
}

/// <summary>What the stations are called.</summary>
public static class StationList
{
    /// <summary>All of them, along the work.</summary>
    public static ImmutableArray<Station> All { get; } = [.. Enum.GetValues<Station>()];

    /// <summary>Its address on the page, such as <c>/timber</c>.</summary>
    public static string Url(this Station station) => "/" + station.ToString().ToLowerInvariant();

    /// <summary>The question it answers.</summary>
    public static string Question(this Station station) => station switch
    {
        Station.Shape => "What shall it be?",
        Station.Timber => "Of which wood?",
        Station.Saw => "What to set and cut?",
        Station.Fit => "Will it close?",
        Station.Glue => "In which order?",
        _ => "How is it turned?",
    };

    /// <summary>The station that a path of the page, such as <c>shape/rings</c>, belongs to; null for a page beside them.</summary>
    public static Station? At(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        string first = path.Split('/')[0];
        return first.Length == 0 ? Station.Shape : All.Where(s => string.Equals(s.ToString(), first, StringComparison.OrdinalIgnoreCase)).Select(s => (Station?)s).FirstOrDefault();
    }
}
