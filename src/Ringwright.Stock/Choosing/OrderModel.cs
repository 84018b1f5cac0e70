using Google.OrTools.Sat;

namespace Ringwright.Stock.Choosing;

/// <summary>
/// Which wedge goes to which place, set and order at once, with the worst gap held: the whole truth, and the last resort where bound
/// and search do not meet. Its effort grows fast with the number of places.
/// </summary>
internal sealed class OrderModel
{
    private readonly ChoosingProblem _problem;
    private readonly CpModel _model = new();
    private readonly BoolVar?[,] _at;
    private readonly LinearExpr[] _lines;

    public OrderModel(ChoosingProblem problem, long gap)
    {
        _problem = problem;
        _at = new BoolVar?[problem.Wedges.Length, problem.Places];
        for (int i = 0; i < problem.Wedges.Length; i++)
            for (int k = 0; k < problem.Places; k++)
                if (problem.Wedges[i].Wood == problem.PlaceWoods[k]) _at[i, k] = _model.NewBoolVar($"x{i}_{k}");
        for (int k = 0; k < problem.Places; k++) _model.AddExactlyOne(Column(k).Select(x => x.At));
        for (int i = 0; i < problem.Wedges.Length; i++) _model.AddAtMostOne(Row(i));
        _lines = Lines();
        AddGap(gap);
    }

    /// <summary>Least range of the joint lines in grains, between <paramref name="floor"/> and that of the hint.</summary>
    public SolverRun LeastWander(long floor, int[] hint, double workLimit, CancellationToken cancel)
    {
        var wander = _model.NewIntVar(floor, RingLevels.WanderOf(_problem, hint), "wander");
        AddRange(wander);
        _model.Minimize(wander);
        Hint(hint);
        return SolverRun.Minimise(_model, workLimit, cancel);
    }

    /// <summary>Least sum of size steps in micrometres, the range of the joint lines held too.</summary>
    public SolverRun LeastSteps(long wander, int[] hint, double workLimit, CancellationToken cancel)
    {
        AddRange(LinearExpr.Constant(wander));
        long most = RingLevels.Of(_problem, hint).Steps;
        var steps = Enumerable.Range(0, _problem.Places).Select(k => _model.NewIntVar(0, most, $"s{k}")).ToArray();
        for (int k = 0; k < _problem.Places; k++)
        {
            int next = (k + 1) % _problem.Places;
            AddAbove(steps[k], SizeAt(k, w => w.Rim) - SizeAt(next, w => w.Rim));
            AddAbove(steps[k], SizeAt(k, w => w.Tip) - SizeAt(next, w => w.Tip));
        }

        _model.Minimize(LinearExpr.Sum(steps));
        Hint(hint);
        return SolverRun.Minimise(_model, workLimit, cancel);
    }

    /// <summary>The wedge at each place of a solved run.</summary>
    public int[] RingOf(CpSolver solver) =>
        [.. Enumerable.Range(0, _problem.Places).Select(k => Column(k).First(x => solver.BooleanValue(x.At)).Wedge)];

    // Excess angle summed over the first k wedges, as variables so that each is one step from the one before.
    private LinearExpr[] Lines()
    {
        long most = _problem.Wedges.Max(w => Math.Abs(w.Excess));
        var lines = new LinearExpr[_problem.Places + 1];
        lines[0] = LinearExpr.Constant(0);
        for (int k = 0; k < _problem.Places; k++)
        {
            var line = _model.NewIntVar(-(k + 1) * most, (k + 1) * most, $"p{k + 1}");
            _model.Add(line == lines[k] + SizeAt(k, w => w.Excess));
            lines[k + 1] = line;
        }

        return lines;
    }

    private void AddGap(long gap)
    {
        for (int part = 0; part < _problem.Parts; part++)
        {
            var excess = _lines[(part + 1) * _problem.PartSize] - _lines[part * _problem.PartSize] + _problem.NominalExcess;
            _model.AddLinearConstraint(excess, -gap * _problem.Grain, gap * _problem.Grain);
        }
    }

    private void AddRange(LinearExpr wander)
    {
        // Without a pattern the ring may be turned so that its lowest joint line is the first, and all turned copies fall away.
        bool turned = _problem.Parts == 1 && _problem.Input.Pattern.Count <= 1;
        long most = 2 * _problem.Places * _problem.Places * _problem.Wedges.Max(w => Math.Abs(w.Excess));
        var lowest = turned ? LinearExpr.Constant(0) : _model.NewIntVar(-most, 0, "lowest");
        for (int k = 0; k <= _problem.Places; k++)
        {
            var line = _problem.Places * _lines[k] - k * _lines[_problem.Places];
            _model.Add(line - lowest >= 0);
            _model.Add(line - lowest <= wander * (_problem.Grain * _problem.Places));
        }
    }

    private void AddAbove(IntVar step, LinearExpr difference)
    {
        _model.Add(step >= difference);
        _model.Add(step >= -1 * difference);
    }

    private LinearExpr SizeAt(int place, Func<MeasuredWedge, long> size)
    {
        var column = Column(place).ToList();
        return LinearExpr.WeightedSum(column.Select(x => x.At), column.Select(x => size(_problem.Wedges[x.Wedge])));
    }

    private IEnumerable<(int Wedge, BoolVar At)> Column(int place)
    {
        for (int i = 0; i < _problem.Wedges.Length; i++)
            if (_at[i, place] is { } at) yield return (i, at);
    }

    private IEnumerable<BoolVar> Row(int wedge)
    {
        for (int k = 0; k < _problem.Places; k++)
            if (_at[wedge, k] is { } at) yield return at;
    }

    private void Hint(int[] ring)
    {
        for (int k = 0; k < _problem.Places; k++)
            foreach (var (wedge, at) in Column(k)) _model.AddHint(at, ring[k] == wedge);
    }
}
