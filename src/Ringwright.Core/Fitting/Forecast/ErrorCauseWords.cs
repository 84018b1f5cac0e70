namespace Ringwright.Core.Fitting;

/// <summary>Causes of error in words.</summary>
public static class ErrorCauseWords
{
    /// <summary>What it is called, in few words.</summary>
    /// <param name="cause">A single cause.</param>
    /// <param name="staves">Whether it is about staves, whose mitre and tilt are set.</param>
    public static string Of(ErrorCause cause, bool staves) => cause switch
    {
        ErrorCause.Setting => staves ? "setting mitre and tilt" : "setting the fences",
        ErrorCause.CutToCut => "cut to cut",
        ErrorCause.Bias => "constant error",
        ErrorCause.Sanding => "uneven sanding",
        ErrorCause.Stop => "length at the stop",
        ErrorCause.Kerf => "width of the kerf",
        _ => "lean of the blade",
    };
}
