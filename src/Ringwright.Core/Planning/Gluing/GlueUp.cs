using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>What a glue-up is for.</summary>
public enum GlueWork
{
    /// <summary>Boards edge to edge, for a solid layer that is wider than one.</summary>
    Edges,

    /// <summary>Strips face to face, for a laminated board.</summary>
    Lamination,

    /// <summary>Neighbouring pieces to one run.</summary>
    Run,

    /// <summary>The two halves of a ring, both at once.</summary>
    Halves,

    /// <summary>The joints that close the ring.</summary>
    Close,
}

/// <summary>What holds a glue-up together while the glue grips.</summary>
public enum GlueClamp
{
    /// <summary>Rubbed together by hand and left lying flat.</summary>
    Rubbed,

    /// <summary>Band clamps.</summary>
    Band,

    /// <summary>A press, or a flat plate with clamps.</summary>
    Press,
}

/// <summary>Neighbouring pieces that hang together.</summary>
/// <param name="First">The first piece, 0-based.</param>
/// <param name="Count">How many pieces.</param>
public readonly record struct GluedRun(int First, int Count);

/// <summary>
/// Joints that are glued in one go, within the open time. Joint i lies between the pieces i and i + 1, 0-based; in a ring the last one
/// lies between the last piece and the first.
/// </summary>
/// <param name="Work">What it is for.</param>
/// <param name="Made">The runs that come of it; a closed ring is one run of all pieces.</param>
/// <param name="Joints">Which joints are glued.</param>
/// <param name="After">Glue-ups of the same list that made its parts.</param>
/// <param name="Clamp">What holds it.</param>
/// <param name="Clamps">How many of that.</param>
public sealed record GlueUp(GlueWork Work, ImmutableArray<GluedRun> Made, ImmutableArray<int> Joints, ImmutableArray<int> After, GlueClamp Clamp, int Clamps);

/// <summary>Glue-ups of one kind, told together.</summary>
/// <param name="Work">What they are for.</param>
/// <param name="Times">How many there are.</param>
/// <param name="Joints">Joints of each.</param>
/// <param name="Size">Pieces in each run that comes of it.</param>
/// <param name="Clamp">What holds each.</param>
/// <param name="Clamps">How many of that for each.</param>
public sealed record GlueStage(GlueWork Work, int Times, int Joints, int Size, GlueClamp Clamp, int Clamps);
