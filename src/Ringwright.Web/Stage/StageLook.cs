using Ringwright.Core.Planning;

namespace Ringwright.Web.Stage;

/// <summary>The ways the piece can be looked at.</summary>
public enum StageView
{
    /// <summary>In three dimensions, as it leaves the lathe.</summary>
    Solid,

    /// <summary>From its side: half from outside, half cut through.</summary>
    Side,

    /// <summary>One ring from above.</summary>
    Above,

    /// <summary>The outside laid flat.</summary>
    Flat,

    /// <summary>What matters at the station: the wedge at the blade, the gaps, the glue-up, the wall.</summary>
    Work,
}

/// <summary>How one window looks at the piece; not part of the work.</summary>
public sealed class StageLook
{
    /// <summary>Raised after every change.</summary>
    public event Action? Changed;

    /// <summary>The view chosen; null for the one that suits the page.</summary>
    public StageView? View { get; private set; }

    /// <summary>Whether woods look as after years in the light.</summary>
    public bool Aged { get; private set; }

    /// <summary>Whether a touch on the flat view paints.</summary>
    public bool Painting { get; private set; }

    /// <summary>A plan that is shown on trial instead of the piece's; null for none.</summary>
    public Plan? Trial { get; private set; }

    /// <summary>Chooses a view.</summary>
    public void Show(StageView? view) => Set(() => View = view);

    /// <summary>Fresh or aged.</summary>
    public void Age(bool aged) => Set(() => Aged = aged);

    /// <summary>Lets touches paint, or not.</summary>
    public void Paint(bool painting) => Set(() => Painting = painting);

    /// <summary>Shows a plan on trial, or ends it.</summary>
    public void Try(Plan? trial) => Set(() => Trial = trial);

    private void Set(Action set)
    {
        set();
        Changed?.Invoke();
    }
}
