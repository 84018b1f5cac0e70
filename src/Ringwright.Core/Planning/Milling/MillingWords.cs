namespace Ringwright.Core.Planning;

/// <summary>What strips are for, in a word.</summary>
public static class MillingWords
{
    /// <summary>In a word or two.</summary>
    public static string Use(StripUse use) => use switch
    {
        StripUse.Spacers => "spacers",
        StripUse.Lamination => "laminated board",
        StripUse.Staves => "staves",
        StripUse.Layer => "one piece",
        _ => "segments",
    };
}
