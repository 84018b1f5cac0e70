using System.Collections.Immutable;
using Ringwright.Core.Planning;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Boards;

/// <summary>What is to be sawn from which boards.</summary>
/// <param name="Rack">The boards.</param>
/// <param name="Demands">What is wanted.</param>
/// <param name="Rules">How boards become strips.</param>
/// <param name="Woods">Tells which names mean the same wood.</param>
public sealed record CuttingRequest(Rack Rack, ImmutableArray<StripDemand> Demands, BoardRules Rules, SpeciesTable Woods)
{
    /// <summary>What <paramref name="plan"/> needs, from <paramref name="rack"/>.</summary>
    /// <exception cref="BadInputException">The rack is empty.</exception>
    public static CuttingRequest For(Plan plan, Rack rack, BoardRules? rules = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(rack);
        if (rack.Boards.IsDefaultOrEmpty)
            throw new BadInputException($"rack {rack.Name}", "there is no board on it", "enter at least one; without a rack you are told what to buy");
        return new(rack, StripDemands.Of(plan), rules ?? BoardRules.Of(plan.Shop), SpeciesTable.For(plan.Shop));
    }

    /// <summary>The name under which all names of one wood are the same.</summary>
    public string WoodOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return (Woods.Find(name)?.Name ?? name.Trim()).ToUpperInvariant();
    }
}

/// <summary>How far the planning of boards has come.</summary>
/// <param name="Share">Share of the work done, 0 to 1.</param>
/// <param name="Stage">What is worked on, in words.</param>
public readonly record struct CuttingProgress(double Share, string Stage);

/// <summary>Plans which board gives which strip.</summary>
public interface IBoardPlanner
{
    /// <summary>
    /// Plans it: as many pieces as can be had, those that are needed before spares; then each ring's wood from as few boards as can be;
    /// then the least wood. What cannot be had is a shortage of the plan, no error.
    /// </summary>
    /// <exception cref="OperationCanceledException">Stopped through <paramref name="cancel"/>.</exception>
    CuttingPlan Plan(CuttingRequest request, IProgress<CuttingProgress>? progress = null, CancellationToken cancel = default);
}
