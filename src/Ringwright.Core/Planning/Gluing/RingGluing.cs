using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>How a ring is brought together.</summary>
public enum GlueWay
{
    /// <summary>One piece of wood: nothing to glue.</summary>
    OnePiece,

    /// <summary>Boards edge to edge, then the round is sawn out.</summary>
    Edges,

    /// <summary>All joints in one go, under a band.</summary>
    AtOnce,

    /// <summary>Runs first, then the ring is closed.</summary>
    Runs,

    /// <summary>Two halves whose faces are trued, then the ring is closed.</summary>
    Halves,

    /// <summary>All pieces but the last, which is fitted to what is left.</summary>
    FitLast,

    /// <summary>Piece by piece on a neighbouring ring.</summary>
    PieceByPiece,

    /// <summary>Sawn out of a disc that is glued with another ring.</summary>
    FromDisc,
}

/// <summary>How one ring is glued.</summary>
/// <param name="Ring">The ring's plan.</param>
/// <param name="Way">How it is brought together.</param>
/// <param name="Pieces">Pieces around it, spacers counted; boards for a layer glued edge to edge.</param>
/// <param name="Boards">Glue-ups of the laminated boards it is sawn from; empty for plain wood.</param>
/// <param name="GlueUps">Its glue-ups in an order in which they can be made.</param>
/// <param name="Figures">The numbers, each with its reason.</param>
/// <param name="Steps">What to do, in order.</param>
public sealed record RingGluing(
    RingPlan Ring, GlueWay Way, int Pieces, ImmutableArray<GlueUp> Boards, ImmutableArray<GlueUp> GlueUps, ImmutableArray<Figure> Figures, ImmutableArray<Sentence> Steps)
{
    /// <summary>Whether its faces are flattened once the glue has cured.</summary>
    public bool IsFlattened => Way is GlueWay.AtOnce or GlueWay.Runs or GlueWay.Halves or GlueWay.FitLast;

    /// <summary>Joints of the ring itself, each glued once.</summary>
    public int Joints => GlueUps.Sum(g => g.Joints.Length);

    /// <summary>Its glue-ups, those alike together, in their order.</summary>
    public IEnumerable<GlueStage> Stages => StagesOf(GlueUps);

    /// <summary>Most clamps of one kind that one of its glue-ups takes.</summary>
    public int Clamps(GlueClamp kind) => Boards.Concat(GlueUps).Where(g => g.Clamp == kind).Select(g => g.Clamps).DefaultIfEmpty(0).Max();

    /// <summary>Glue-ups told by their kind.</summary>
    public static IEnumerable<GlueStage> StagesOf(ImmutableArray<GlueUp> glueUps) => glueUps
        .GroupBy(g => (g.Work, g.Joints.Length, g.Made[0].Count, g.Clamp, g.Clamps))
        .OrderBy(g => g.Key.Work).ThenBy(g => g.Key.Count)
        .Select(g => new GlueStage(g.Key.Work, g.Count(), g.Key.Length, g.Key.Count, g.Key.Clamp, g.Key.Clamps));

    /// <summary>The figure called <paramref name="name"/>, or null.</summary>
    public Figure? Find(string name) => Figures.FirstOrDefault(f => string.Equals(f.Name, name, StringComparison.OrdinalIgnoreCase));
}
