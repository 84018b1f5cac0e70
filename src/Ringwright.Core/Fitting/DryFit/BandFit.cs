using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Shortest band without penetration: a primal-dual interior-point method (Mehrotra's predictor and corrector) whose
/// every step linearises rotations, clearances and band anew at the ring as it lies, so "re-linearise until it
/// settles" and "solve" are one loop. Unknowns are the joint states, three per joint; clearances and band belong to
/// joints, and only the closing of the ring couples them (see <see cref="CoupledSystem"/>): a step costs O(N).
/// </summary>
internal sealed class BandFit
{
    private const int MostSteps = 80;
    private const int MostTries = 4;
    private const int FreeSteps = 25;
    private const int MoreFreeSteps = 5;
    private const int ClosingRows = 3;
    private const double EndComplementarity = 1e-13;
    private const double EndMismatch = 1e-10;
    private const double EndImbalance = 1e-7;
    private const double LongestTurn = 0.1;
    private const double LongestMove = 0.3;

    private readonly CoupledSystem _system = new();
    private double[] _couplingRight = new double[ClosingRows];
    private readonly double[] _closing = new double[ClosingRows];
    private SharingTerm _sharing;
    private JointState[] _states = [];
    private BandPull[] _pulls = [];
    private BandBend[] _bends = [];
    private bool[] _isPulling = [];
    private Vector3D[] _gradient = [];
    private Vector3D[] _change = [];

    /// <summary>The shapes.</summary>
    public RingModel Model { get; } = new();

    /// <summary>Where the wedges lie.</summary>
    public RingLayout Layout { get; } = new();

    /// <summary>The band.</summary>
    public BandLength Band { get; } = new();

    /// <summary>The clearances.</summary>
    public Clearances Clearances { get; } = new();

    /// <summary>The pairs of wedges kept apart at the centre.</summary>
    public CentreContacts Centre { get; } = new();

    /// <summary>State of each joint.</summary>
    public ReadOnlySpan<JointState> States => _states.AsSpan(0, Model.Count);

    /// <summary>Steps taken, all tries together.</summary>
    public int Steps { get; private set; }

    /// <summary>Solves for the given wedges; true when it settled.</summary>
    public bool Run(ReadOnlySpan<FitWedge> wedges)
    {
        Model.Load(wedges);
        _sharing = new SharingTerm(Model);
        Clearances.Load(Model);
        Centre.Load(Model, wedges);
        Steps = 0;
        Begin(1);
        if (!Settle(MostSteps)) return false;
        return !Centre.Overlaps(Model, Layout, CentreContacts.Tolerance) || RunWatched();
    }

    /// <summary>The ring again with the tips kept apart at the centre. Where it swaps edges without end, it is tried from farther out.</summary>
    private bool RunWatched()
    {
        for (int attempt = 0; attempt < MostTries; attempt++)
        {
            Centre.Watch(Model);
            Begin(1 << attempt);
            if (Settle(FreeSteps + (attempt * MoreFreeSteps)) && !Centre.Overlaps(Model, Layout, CentreContacts.Tolerance)) return true;
        }

        return false;
    }

    /// <summary>Steps until settled; the edges at the centre are chosen anew in the first <paramref name="freeSteps"/> of them.</summary>
    private bool Settle(int freeSteps)
    {
        for (int step = 0; step < MostSteps; step++, Steps++)
        {
            Linearise(step >= freeSteps);
            if (IsSettled()) return true;
            if (!Advance()) return false;
        }

        Layout.Place(Model, States);
        return false;
    }

    private void Begin(double spread)
    {
        int n = Model.Count;
        if (_states.Length < n)
        {
            (_states, _pulls, _bends, _isPulling) = (new JointState[n], new BandPull[n], new BandBend[n], new bool[n]);
            (_gradient, _change) = (new Vector3D[n], new Vector3D[n]);
        }

        Array.Clear(_closing);
        double turn = ((2 * Math.PI) - Model.AngleSum) / n;
        double least = double.PositiveInfinity;
        for (int j = 0; j < n; j++) _states[j] = new(0, turn, 0);
        Clearances.Evaluate(Model, States);
        for (int j = 0; j < n; j++)
            foreach (JointRow row in Clearances.Of(j)) least = Math.Min(least, row.Clearance);
        Open((0.02 * spread * Model.MeanRim) - least, turn);
        Clearances.Evaluate(Model, States);
        Clearances.Begin();
        _isPulling.AsSpan(0, n).Clear();
    }

    /// <summary>Opens all joints alike, and so far that no tips overlap at the centre if that is watched.</summary>
    private void Open(double start, double turn)
    {
        for (int round = 0; round < 20; round++, start *= 1.3)
        {
            for (int j = 0; j < Model.Count; j++) _states[j] = new(start, turn, 0);
            if (!Centre.IsWatching) return;
            Layout.Place(Model, States);
            if (!Centre.Overlaps(Model, Layout, 0)) break;
        }

        Centre.Begin(0.1 * start);
    }

    private Vector2D Step(int j) => new(_states[j].Across, _states[j].Along);

    /// <summary>Where the band has come to touch a joint, its pull is taken up there; where it has left, it is dropped.</summary>
    private void TakeUpBand()
    {
        double product = Complementarity();
        for (int j = 0; j < Model.Count; j++)
        {
            if (!_bends[j].OnBand) _pulls[j] = default;
            else if (!_isPulling[j] || !_pulls[j].Bend(_bends[j])) _pulls[j].Begin(_bends[j], product);
        }

        for (int j = 0; j < Model.Count; j++) _isPulling[j] = _bends[j].OnBand;
    }

    private void Linearise(bool fixedEdges)
    {
        int n = Model.Count;
        Layout.Place(Model, States);
        Clearances.Evaluate(Model, States);
        if (Centre.IsWatching) Centre.Evaluate(Layout, Complementarity(), fixedEdges);
        if (_couplingRight.Length < ClosingRows + Centre.Count) _couplingRight = new double[2 * (ClosingRows + Centre.Count)];
        _system.Reset(n, ClosingRows + Centre.Count);
        Band.Wrap(Model, Layout, _bends, _gradient, _system.Blocks);
        TakeUpBand();
        for (int j = 0; j < n; j++)
        {
            if (_isPulling[j]) _pulls[j].AddTo(ref _gradient[j], ref _system.Blocks[j]);
            _sharing.AddDerivatives(_states[j], Model.TipX(j), ref _gradient[j], ref _system.Blocks[j]);
            Couple(j);
        }

        Clearances.AddContacts(_gradient, _system.Blocks);
        Centre.AddTo(_system, ClosingRows, Model, Layout, _gradient);
        for (int j = 0; j < n; j++)
            for (int r = 0; r < ClosingRows; r++) _gradient[j] += _closing[r] * _system.Coupling(j)[r];
    }

    /// <summary>The motion of the chain's end, by the parts of a joint's state: across, turn, along.</summary>
    private void Couple(int j)
    {
        Vector2D along = Layout.Axis[j];
        Vector2D lever = Layout.Minus[0].Origin - Layout.Minus[j + 1].Origin;
        Span<Vector3D> rows = _system.Coupling(j);
        double tipX = Model.TipX(j);
        rows[0] = JointState.ByEnds(-along.Y, -lever.Y, along.X, tipX);
        rows[1] = JointState.ByEnds(along.X, lever.X, along.Y, tipX);
        rows[2] = JointState.ByEnds(0, 1, 0, tipX);
    }

    private double Complementarity()
    {
        double sum = Clearances.Complementarity + Centre.Complementarity;
        int count = Clearances.Total + Centre.Count;
        for (int j = 0; j < Model.Count; j++)
        {
            if (!_isPulling[j]) continue;
            sum += _pulls[j].Complementarity;
            count += 2;
        }

        return sum / count;
    }

    private bool IsSettled()
    {
        (double x, double y, double angle) = Layout.Miss;
        if (Math.Abs(x) + Math.Abs(y) + (Model.Radius * Math.Abs(angle)) > EndMismatch) return false;
        if (Complementarity() > EndComplementarity || Math.Max(Clearances.WorstMismatch, Centre.WorstMismatch) > EndMismatch) return false;
        return Imbalance() <= EndImbalance;
    }

    private double Imbalance()
    {
        double worst = 0;
        for (int j = 0; j < Model.Count; j++)
        {
            Vector3D g = _gradient[j];
            worst = Math.Max(worst, Math.Max(Math.Abs(g.X), Math.Max(Math.Abs(g.Y), Math.Abs(g.Z))));
        }

        return worst;
    }

    private bool Advance()
    {
        if (!_system.Factor()) return false;
        double now = Complementarity();
        double whole = Clearances.Complementarity + Centre.Complementarity;
        for (int j = 0; j < Model.Count; j++) whole += _pulls[j].Complementarity;
        Solve(0, corrected: false);
        (double slack, double force) = Longest(1);
        double after = Clearances.ComplementarityAfter(slack, force) + Centre.ComplementarityAfter(slack, force);
        for (int j = 0; j < Model.Count; j++) after += _pulls[j].ComplementarityAfter(slack, force);
        double centring = Math.Pow(after / whole, 3);
        Solve(Math.Max(centring * now, 0.1 * EndComplementarity), corrected: true);
        return Move();
    }

    private void Solve(double centre, bool corrected)
    {
        int n = Model.Count;
        Clearances.Aim(centre, corrected);
        for (int j = 0; j < n; j++)
        {
            _change[j] = -_gradient[j];
            if (!_isPulling[j]) continue;
            _pulls[j].Aim(centre, corrected);
            _change[j] += _pulls[j].Right(Step(j));
        }

        Clearances.AddRight(_change.AsSpan(0, n));
        (_couplingRight[0], _couplingRight[1], _couplingRight[2]) = (-Layout.Miss.X, -Layout.Miss.Y, -Layout.Miss.Angle);
        Centre.Aim(centre, corrected, _couplingRight.AsSpan(ClosingRows));
        _system.Solve(_change.AsSpan(0, n), _couplingRight);
        Clearances.Step(_change.AsSpan(0, n));
        Centre.Step(_system, ClosingRows, _change.AsSpan(0, n));
        for (int j = 0; j < n; j++)
            if (_isPulling[j]) _pulls[j].Step(Step(j), new(_change[j].X, _change[j].Z));
    }

    private (double Slack, double Force) Longest(double share)
    {
        (double slack, double force) = Clearances.Longest(share);
        (slack, force) = Centre.Longest(share, slack, force);
        for (int j = 0; j < Model.Count; j++) (slack, force) = _pulls[j].Longest(share, slack, force);
        return (slack, force);
    }

    private bool Move()
    {
        (double slack, double force) = Longest(0.995);
        slack *= Restraint();
        if (!double.IsFinite(slack + force)) return false;
        for (int r = 0; r < ClosingRows; r++) _closing[r] += force * _system.Multipliers[r];
        for (int j = 0; j < Model.Count; j++)
        {
            _states[j] = _states[j].Moved(slack, _change[j], Model.TipX(j));
            _pulls[j].Move(slack, force);
        }

        Clearances.Move(slack, force);
        Centre.Move(slack, force);
        Centre.Moved(slack * LargestMove());
        return true;
    }

    /// <summary>The fraction of the step that stays where linearising means something; NaN if the step is not a number.</summary>
    private double Restraint()
    {
        double turn = LongestTurn;
        for (int j = 0; j < Model.Count; j++) turn = Math.Max(turn, Math.Abs((_change[j].Y - _change[j].X) / Model.TipX(j)));
        double most = LongestMove * Model.MeanRim;
        return Math.Min(LongestTurn / turn, most / Math.Max(most, LargestMove()));
    }

    private double LargestMove()
    {
        double move = 0;
        for (int j = 0; j < Model.Count; j++) move = Math.Max(move, Math.Max(Math.Abs(_change[j].X), Math.Abs(_change[j].Z)));
        return move;
    }
}
