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
    private JointState[] _states = [];
    private Vector3D[] _gradient = [];
    private Vector3D[] _change = [];
    private double[] _tipX = [];

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
        Clearances.Load(Model);
        Begin();
        for (Steps = 0; Steps < MostSteps; Steps++)
        {
            Linearise();
            if (IsSettled()) return true;
            if (!Advance()) return false;
        }

        return false;
    }

    private void Begin()
    {
        int n = Model.Count;
        if (_states.Length < n)
            (_states, _gradient, _change, _tipX) = (new JointState[n], new Vector3D[n], new Vector3D[n], new double[n]);
        Array.Clear(_closing);
        double turn = ((2 * Math.PI) - Model.AngleSum) / n;
        double least = double.PositiveInfinity;
        for (int j = 0; j < n; j++)
        {
            _states[j] = new(0, turn, 0);
            _tipX[j] = TipX(j);
        }

        Clearances.Evaluate(Model, States);
        for (int j = 0; j < n; j++)
            foreach (JointRow row in Clearances.Of(j)) least = Math.Min(least, row.Clearance);
        double start = (0.02 * Model.MeanRim) - least;
        for (int j = 0; j < n; j++) _states[j] = new(start, turn, 0);
        Clearances.Evaluate(Model, States);
        Clearances.Begin();
    }

    private double TipX(int joint)
    {
        FaceSpan a = Model.Plus(joint).Bottom;
        FaceSpan b = Model.Minus(Model.Next(joint)).Bottom;
        return Math.Max(Model.Points[a.Start + a.Main].X, Model.Points[b.Start + b.Main].X);
    }

    private void Linearise()
    {
        int n = Model.Count;
        Layout.Place(Model, States);
        Clearances.Evaluate(Model, States);
        _system.Reset(n, 3);
        Array.Clear(_gradient);
        Band.AddDerivatives(Model, Layout, _gradient, _system.Blocks);
        for (int j = 0; j < n; j++)
        {
            SharingTerm.AddDerivatives(_states[j], _tipX[j], Model.Radius, ref _gradient[j], ref _system.Blocks[j]);
            Couple(j);
        }

        Clearances.AddContacts(_gradient, _system.Blocks);
        for (int j = 0; j < n; j++)
            for (int r = 0; r < 3; r++) _gradient[j] += _closing[r] * _system.Coupling(j)[r];
    }

    /// <summary>The motion of the chain's end, about the origin, by the parts of a joint's state: across, turn, along.</summary>
    private void Couple(int j)
    {
        Vector2D along = Layout.Axis[j];
        Vector2D hinge = Layout.Minus[j + 1].Origin;
        Vector2D end = Layout.Minus[0].Origin - hinge;
        Span<Vector3D> rows = _system.Coupling(j);
        rows[0] = new(-along.Y, -end.Y, along.X);
        rows[1] = new(along.X, end.X, along.Y);
        rows[2] = new(0, 1, 0);
    }

    private bool IsSettled()
    {
        (double x, double y, double angle) = Layout.Miss;
        if (Math.Abs(x) + Math.Abs(y) + (Model.Radius * Math.Abs(angle)) > EndMismatch) return false;
        if (Clearances.Complementarity > EndComplementarity || Clearances.WorstMismatch > EndMismatch) return false;
        double worst = 0;
        for (int j = 0; j < Model.Count; j++)
        {
            Vector3D g = _gradient[j];
            worst = Math.Max(worst, Math.Max(Math.Abs(g.X), Math.Max(Math.Abs(g.Y / _tipX[j]), Math.Abs(g.Z))));
        }

        return worst <= EndImbalance;
    }

    private bool Advance()
    {
        if (!_system.Factor()) return false;
        double now = Clearances.Complementarity;
        Solve(0, corrected: false);
        (double slack, double force) = Clearances.Longest(1);
        double centring = Math.Pow(Clearances.ComplementarityAfter(slack, force) / now, 3);
        Solve(Math.Max(centring * now, 0.1 * EndComplementarity), corrected: true);
        return Move();
    }

    private void Solve(double centre, bool corrected)
    {
        int n = Model.Count;
        Clearances.Aim(centre, corrected);
        for (int j = 0; j < n; j++) _change[j] = -_gradient[j];
        Clearances.AddRight(_change.AsSpan(0, n));
        (_couplingRight[0], _couplingRight[1], _couplingRight[2]) = (-Layout.Miss.X, -Layout.Miss.Y, -Layout.Miss.Angle);
        _system.Solve(_change.AsSpan(0, n), _couplingRight);
        Clearances.Step(_change.AsSpan(0, n));
    }

    private bool Move()
    {
        (double slack, double force) = Clearances.Longest(0.995);
        slack *= Restraint();
        if (!double.IsFinite(slack + force)) return false;
        for (int j = 0; j < Model.Count; j++) _states[j] = _states[j].Moved(slack, _change[j]);
        for (int r = 0; r < 3; r++) _closing[r] += force * _system.Multipliers[r];
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
            turn = Math.Max(turn, Math.Abs(_change[j].Y));
            move = Math.Max(move, Math.Max(Math.Abs(_change[j].X), Math.Abs(_change[j].Z)));
        }

        return Math.Min(LongestTurn / turn, LongestMove * Model.MeanRim / move);
    }
}
