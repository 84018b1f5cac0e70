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
    private const double EndComplementarity = 1e-13;
    private const double EndMismatch = 1e-10;
    private const double EndImbalance = 1e-7;
    private const double LongestTurn = 0.1;
    private const double LongestMove = 0.3;

    private readonly CoupledSystem _system = new();
    private readonly double[] _couplingRight = new double[3];
    private readonly double[] _closing = new double[3];
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

    /// <summary>State of each joint.</summary>
    public ReadOnlySpan<JointState> States => _states.AsSpan(0, Model.Count);

    /// <summary>Steps taken.</summary>
    public int Steps { get; private set; }

    /// <summary>Solves for the given wedges; true when it settled.</summary>
    public bool Run(ReadOnlySpan<FitWedge> wedges)
    {
        Model.Load(wedges);
        _sharing = new SharingTerm(Model);
        Clearances.Load(Model);
        Begin();
        for (Steps = 0; Steps < MostSteps; Steps++)
        {
            Linearise();
            if (IsSettled()) return true;
            if (!Advance()) return false;
        }

        Layout.Place(Model, States);
        return false;
    }

    private void Begin()
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
        double start = (0.02 * Model.MeanRim) - least;
        for (int j = 0; j < n; j++) _states[j] = new(start, turn, 0);
        Clearances.Evaluate(Model, States);
        Clearances.Begin();
        _isPulling.AsSpan(0, n).Clear();
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

    private void Linearise()
    {
        int n = Model.Count;
        Layout.Place(Model, States);
        Clearances.Evaluate(Model, States);
        _system.Reset(n, 3);
        Band.Wrap(Model, Layout, _bends, _gradient, _system.Blocks);
        TakeUpBand();
        for (int j = 0; j < n; j++)
        {
            if (_isPulling[j]) _pulls[j].AddTo(ref _gradient[j], ref _system.Blocks[j]);
            _sharing.AddDerivatives(_states[j], Model.TipX(j), ref _gradient[j], ref _system.Blocks[j]);
            Couple(j);
        }

        Clearances.AddContacts(_gradient, _system.Blocks);
        for (int j = 0; j < n; j++)
            for (int r = 0; r < 3; r++) _gradient[j] += _closing[r] * _system.Coupling(j)[r];
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
        double sum = Clearances.Complementarity;
        int count = Clearances.Total;
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
        if (Complementarity() > EndComplementarity || Clearances.WorstMismatch > EndMismatch) return false;
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
        double whole = Clearances.Complementarity;
        for (int j = 0; j < Model.Count; j++) whole += _pulls[j].Complementarity;
        Solve(0, corrected: false);
        (double slack, double force) = Longest(1);
        double after = Clearances.ComplementarityAfter(slack, force);
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
        _system.Solve(_change.AsSpan(0, n), _couplingRight);
        Clearances.Step(_change.AsSpan(0, n));
        for (int j = 0; j < n; j++)
            if (_isPulling[j]) _pulls[j].Step(Step(j), new(_change[j].X, _change[j].Z));
    }

    private (double Slack, double Force) Longest(double share)
    {
        (double slack, double force) = Clearances.Longest(share);
        for (int j = 0; j < Model.Count; j++) (slack, force) = _pulls[j].Longest(share, slack, force);
        return (slack, force);
    }

    private bool Move()
    {
        (double slack, double force) = Longest(0.995);
        slack *= Restraint();
        if (!double.IsFinite(slack + force)) return false;
        for (int r = 0; r < 3; r++) _closing[r] += force * _system.Multipliers[r];
        for (int j = 0; j < Model.Count; j++)
        {
            _states[j] = _states[j].Moved(slack, _change[j], Model.TipX(j));
            _pulls[j].Move(slack, force);
        }

        Clearances.Move(slack, force);
        return true;
    }

    /// <summary>The fraction of the step that stays where linearising means something; NaN if the step is not a number.</summary>
    private double Restraint()
    {
        double turn = LongestTurn;
        double move = LongestMove * Model.MeanRim;
        for (int j = 0; j < Model.Count; j++)
        {
            Vector3D c = _change[j];
            turn = Math.Max(turn, Math.Abs((c.Y - c.X) / Model.TipX(j)));
            move = Math.Max(move, Math.Max(Math.Abs(c.X), Math.Abs(c.Z)));
        }

        return Math.Min(LongestTurn / turn, LongestMove * Model.MeanRim / move);
    }
}
