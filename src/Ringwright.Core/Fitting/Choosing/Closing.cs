namespace Ringwright.Core.Fitting;

/// <summary>How a ring of rigid wedges is closed, and so where its error opens.</summary>
public enum Closing
{
    /// <summary>
    /// In one go, joints shut one after the other: the whole closing error E = 2π − sum of the wedge angles gathers in the last joint,
    /// which opens by R |E|, at the rim when E > 0 and at the tip when E &lt; 0. (Shared evenly by a band it is R |E| / N at each of N joints.)
    /// </summary>
    Whole,

    /// <summary>
    /// In two halves whose faces are not trued: each half must sum to π, and the two last joints, where the halves meet, open by
    /// R |S − π| each, S being the sum of a half. Both faces of a half are held against one straight line. (Halves that miss π by
    /// the same amount in opposite ways could be fitted to each other; this rule does not count on that, so it is the stricter one.)
    /// </summary>
    Halves,
}
