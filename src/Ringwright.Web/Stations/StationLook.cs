using Ringwright.Core.Fitting;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Stations;

/// <summary>A dry fit to be seen on the stage.</summary>
/// <param name="Of">The ring's plan that it is of.</param>
/// <param name="Fit">The dry fit.</param>
/// <param name="Heading">What it is.</param>
public sealed record ShownFit(RingPlan Of, DryFitResult Fit, string Heading);

/// <summary>What one window looks at within a station; not part of the work.</summary>
public sealed class StationLook
{
    /// <summary>Raised after every change.</summary>
    public event Action? Changed;

    /// <summary>Which of a ring's cuts is looked at, from 0.</summary>
    public int Cut { get; private set; }

    /// <summary>The dry fit on the stage; null for a simulated one.</summary>
    public ShownFit? Fit { get; private set; }

    /// <summary>Looks at another cut.</summary>
    public void Choose(int cut)
    {
        Cut = cut;
        Changed?.Invoke();
    }

    /// <summary>Lays a ring dry on the stage.</summary>
    public void Lay(ShownFit? fit)
    {
        Fit = fit;
        Changed?.Invoke();
    }
}
