using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The clearances that keep apart wedges that are not neighbours, where tips meet at the centre. A ring is first laid
/// without them; only if that drives such wedges into each other is it laid again, from an opened ring inwards, and
/// then every pair is taken up as it comes near and left when it is far again. A clearance is the distance along the
/// pair's best separating edge and moves with every joint between its two wedges.
/// </summary>
/// <remarks>
/// Which way tips pass each other is a choice with many answers; drawing the ring in from outside, as hands and band do,
/// makes one that no small motion betters. Late in the iteration the edges stand fixed, or it would swap them for ever.
/// </remarks>
internal sealed class CentreContacts
{
    /// <summary>Overlaps up to this depth are left alone, mm.</summary>
    public const double Tolerance = 1e-4;

    /// <summary>Share of a step's largest motion within which a pair counts as near.</summary>
    private const double NearShare = 0.02;

    private const double LeastNear = 1e-5;
    private const double SlightForce = 1e-3;

    private readonly RingOutlines _outlines = new();
    private readonly NearPairs _near = new();
    private CentrePair[] _pairs = new CentrePair[16];
    private double _reach;

    /// <summary>Whether pairs are watched at all.</summary>
    public bool IsWatching { get; private set; }

    /// <summary>Number of pairs kept apart.</summary>
    public int Count { get; private set; }

    /// <summary>Sum of the products of slack and force, mm.</summary>
    public double Complementarity
    {
        get
        {
            double sum = 0;
            foreach (ref readonly CentrePair pair in Pairs) sum += pair.Slack * pair.Force;
            return sum;
        }
    }

    /// <summary>Largest difference between a clearance and its slack, mm.</summary>
    public double WorstMismatch
    {
        get
        {
            double worst = 0;
            foreach (ref readonly CentrePair pair in Pairs) worst = Math.Max(worst, Math.Abs(pair.Mismatch));
            return worst;
        }
    }

    private Span<CentrePair> Pairs => _pairs.AsSpan(0, Count);

    /// <summary>Takes in a ring, unwatched.</summary>
    public void Load(RingModel model, ReadOnlySpan<FitWedge> wedges)
    {
        (Count, IsWatching) = (0, false);
        _outlines.Load(model, wedges);
    }

    /// <summary>Starts to watch, with no pair taken up.</summary>
    public void Watch(RingModel model)
    {
        (Count, IsWatching) = (0, true);
        _near.Load(model.Count);
    }

    /// <summary>Whether wedges that are not neighbours overlap deeper than <paramref name="depth"/> mm in the ring as laid out.</summary>
    public bool Overlaps(RingModel model, RingLayout layout, double depth)
    {
        _outlines.Place(layout);
        if (_outlines.HasOpening(layout)) return false;
        _near.Load(model.Count);
        return _near.After(WedgePair.Before, _outlines, -depth).IsSome;
    }

    /// <summary>Begins a solve from the ring as laid out; pairs within <paramref name="reach"/> mm count as near at first.</summary>
    public void Begin(double reach) => _reach = reach;

    /// <summary>Tells how far the last step moved any joint, mm: pairs that could meet in the next one are near.</summary>
    public void Moved(double step) => _reach = Math.Max(LeastNear, NearShare * step);

    /// <summary>Sees all pairs anew in the ring as laid out, and those that have come near; with <paramref name="product"/> as slack times force to begin with.</summary>
    public void Evaluate(RingLayout layout, double product, bool fixedEdges)
    {
        if (!IsWatching) return;
        _outlines.Place(layout);
        for (int r = Count - 1; r >= 0; r--)
        {
            ref CentrePair pair = ref _pairs[r];
            if (fixedEdges) pair.SeeAgain(Low(pair.Wedges), High(pair.Wedges));
            else pair.See(Low(pair.Wedges), High(pair.Wedges));
            if (!fixedEdges && pair.Clearance > 4 * _reach && pair.Force < SlightForce) Leave(r);
        }

        for (WedgePair p = _near.After(WedgePair.Before, _outlines, _reach); p.IsSome; p = _near.After(p, _outlines, _reach)) TakeUp(p, product);
    }

    /// <summary>Adds the forces to the gradients, and the pairs as rows that yield by slack over force, from row <paramref name="firstRow"/> on.</summary>
    public void AddTo(CoupledSystem system, int firstRow, RingModel model, RingLayout layout, Span<Vector3D> gradient)
    {
        for (int r = 0; r < Count; r++)
        {
            ref readonly CentrePair pair = ref _pairs[r];
            system.SetRow(firstRow + r, pair.Wedges.Low, pair.Wedges.High, pair.Slack / pair.Force);
            for (int j = pair.Wedges.Low; j < pair.Wedges.High; j++)
            {
                Vector3D row = pair.Gradient(layout.Axis[j], layout.Minus[j + 1].Origin, model.TipX(j));
                system.Coupling(j)[firstRow + r] = row;
                gradient[j] -= pair.Force * row;
            }
        }
    }

    /// <summary>Asks for slack times force to become <paramref name="centre"/>, less the product of the last steps when <paramref name="corrected"/>; fills the rows' right-hand sides.</summary>
    public void Aim(double centre, bool corrected, Span<double> right)
    {
        for (int r = 0; r < Count; r++)
        {
            ref CentrePair pair = ref _pairs[r];
            double target = centre - (corrected ? pair.SlackStep * pair.ForceStep : 0) - (pair.Slack * pair.Force);
            right[r] = (target / pair.Force) - pair.Mismatch;
        }
    }

    /// <summary>From the rows' multipliers and the change of the joints, the steps of slacks and forces.</summary>
    public void Step(CoupledSystem system, int firstRow, ReadOnlySpan<Vector3D> change)
    {
        for (int r = 0; r < Count; r++)
        {
            ref CentrePair pair = ref _pairs[r];
            double moved = 0;
            for (int j = pair.Wedges.Low; j < pair.Wedges.High; j++) moved += system.Coupling(j)[firstRow + r].Dot(change[j]);
            pair.SlackStep = moved + pair.Mismatch;
            pair.ForceStep = -system.Multipliers[firstRow + r];
        }
    }

    /// <summary>Shortens the two fractions so that no more than <paramref name="share"/> of any slack or force is used up.</summary>
    public (double Slack, double Force) Longest(double share, double slack, double force)
    {
        foreach (ref readonly CentrePair pair in Pairs)
        {
            if (slack * pair.SlackStep < -share * pair.Slack) slack = -share * pair.Slack / pair.SlackStep;
            if (force * pair.ForceStep < -share * pair.Force) force = -share * pair.Force / pair.ForceStep;
        }

        return (slack, force);
    }

    /// <summary>Sum of the products after the given fractions of the steps.</summary>
    public double ComplementarityAfter(double slackPart, double forcePart)
    {
        double sum = 0;
        foreach (ref readonly CentrePair pair in Pairs)
            sum += (pair.Slack + (slackPart * pair.SlackStep)) * (pair.Force + (forcePart * pair.ForceStep));
        return sum;
    }

    /// <summary>Takes the given fractions of the steps.</summary>
    public void Move(double slackPart, double forcePart)
    {
        foreach (ref CentrePair pair in Pairs)
        {
            pair.Slack += slackPart * pair.SlackStep;
            pair.Force += forcePart * pair.ForceStep;
        }
    }

    private void TakeUp(WedgePair wedges, double product)
    {
        if (Count == _pairs.Length) Array.Resize(ref _pairs, 2 * Count);
        var pair = new CentrePair { Wedges = wedges };
        pair.See(Low(wedges), High(wedges));
        pair.Slack = Math.Max(pair.Clearance, _reach);
        pair.Force = product / pair.Slack;
        _pairs[Count++] = pair;
        _near.Take(wedges, taken: true);
    }

    private void Leave(int row)
    {
        _near.Take(_pairs[row].Wedges, taken: false);
        _pairs[row] = _pairs[--Count];
    }

    private ReadOnlySpan<Vector2D> Low(WedgePair wedges) => _outlines.Of(wedges.Low, wedges.Top);

    private ReadOnlySpan<Vector2D> High(WedgePair wedges) => _outlines.Of(wedges.High, wedges.Top);
}
