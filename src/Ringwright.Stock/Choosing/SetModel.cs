using Google.OrTools.Sat;

namespace Ringwright.Stock.Choosing;

/// <summary>
/// Which wedges, order left open: how many of each class go into each part. Wedges of one wood and angle are one integer, so readings
/// in whole hundredths of a millimetre make a small model.
/// </summary>
internal sealed class SetModel
{
    private readonly ChoosingProblem _problem;
    private readonly CpModel _model = new();
    private readonly IntVar[,] _counts;
    private readonly LinearExpr[] _partExcess;
    private readonly LinearExpr _sum;

    public SetModel(ChoosingProblem problem)
    {
        _problem = problem;
        _counts = new IntVar[problem.Parts, problem.Classes.Length];
        for (int part = 0; part < problem.Parts; part++)
            for (int c = 0; c < problem.Classes.Length; c++)
                _counts[part, c] = _model.NewIntVar(0, problem.Classes[c].Members.Length, $"n{part}_{c}");
        AddNeeds();
        AddStock();
        _partExcess = [.. Enumerable.Range(0, problem.Parts).Select(PartSum)];
        _sum = LinearExpr.Sum(_partExcess);
        AddHalvesOrder();
    }

    /// <summary>Least worst gap in grains, between <paramref name="floor"/> and <paramref name="most"/>.</summary>
    public SolverRun LeastGap(long floor, long most, ClassCounts hint, double workLimit, CancellationToken cancel)
    {
        var gap = _model.NewIntVar(floor, most, "gap");
        foreach (var excess in _partExcess) AddWithin(excess + _problem.NominalExcess, gap * _problem.Grain);
        _model.Minimize(gap);
        Hint(hint);
        return SolverRun.Minimise(_model, workLimit, cancel);
    }

    /// <summary>
    /// With no part off by more than <paramref name="gapLimit"/> nanoradians, the least range of the joint lines that no order of the
    /// set can go below: the largest single deviation from the mean, what the halves are off the mean, and what runs of whole woods add
    /// up to on average. Between <paramref name="floor"/> and <paramref name="most"/> grains.
    /// </summary>
    public SolverRun LeastWanderBound(long gapLimit, long floor, long most, ClassCounts hint, double workLimit, CancellationToken cancel)
    {
        var wander = _model.NewIntVar(floor, most, "wander");
        AddWanderBound(gapLimit, wander);
        _model.Minimize(wander);
        Hint(hint);
        return SolverRun.Minimise(_model, workLimit, cancel);
    }

    /// <summary>Sets whose bound of the range is at most <paramref name="wander"/> grains, up to a number of them.</summary>
    public SetList Sets(long gapLimit, long wander, int most, double workLimit, CancellationToken cancel)
    {
        AddWanderBound(gapLimit, LinearExpr.Constant(wander));
        return SolverRun.Enumerate(_model, CountsOf, most, workLimit, cancel);
    }

    /// <summary>The counts of a solved run.</summary>
    public ClassCounts CountsOf(CpSolver solver) => CountsOf(n => solver.Value(n));

    private ClassCounts CountsOf(Func<IntVar, long> value)
    {
        var counts = new ClassCounts(_problem);
        for (int part = 0; part < _problem.Parts; part++)
            for (int c = 0; c < _problem.Classes.Length; c++)
                counts[part, c] = (int)value(_counts[part, c]);
        return counts;
    }

    private void AddNeeds()
    {
        for (int part = 0; part < _problem.Parts; part++)
            for (int wood = 0; wood < _problem.Woods; wood++)
                _model.Add(LinearExpr.Sum(OfWood(part, wood).Select(c => _counts[part, c])) == _problem.Need(part, wood));
    }

    private void AddStock()
    {
        if (_problem.Parts == 1) return;
        for (int c = 0; c < _problem.Classes.Length; c++) _model.Add(_counts[0, c] + _counts[1, c] <= _problem.Classes[c].Members.Length);
    }

    // Where both halves want the same woods they may change places; one way round is enough.
    private void AddHalvesOrder()
    {
        bool alike = _problem.Parts == 2 && Enumerable.Range(0, _problem.PartSize).All(k => _problem.PlaceWoods[k] == _problem.PlaceWoods[k + _problem.PartSize]);
        if (alike) _model.Add(_partExcess[0] <= _partExcess[1]);
    }

    private void AddWanderBound(long gapLimit, LinearExpr wander)
    {
        foreach (var excess in _partExcess) AddWithin(excess + _problem.NominalExcess, LinearExpr.Constant(gapLimit));
        var range = wander * (_problem.Grain * _problem.Places);
        for (int c = 0; c < _problem.Classes.Length; c++) AddSingle(c, range);
        if (_problem.Parts == 2) AddWithin(_problem.Places * _partExcess[0] - _problem.PartSize * _sum, range);
        else AddRuns(wander);
    }

    private void AddSingle(int c, LinearExpr range)
    {
        for (int part = 0; part < _problem.Parts; part++)
        {
            var used = _model.NewBoolVar($"u{part}_{c}");
            _model.Add(_counts[part, c] <= _problem.Classes[c].Members.Length * used);
            _model.Add(_counts[part, c] >= used);
            var off = LinearExpr.Constant(_problem.Places * _problem.Classes[c].Excess) - _sum;
            _model.Add(off <= range).OnlyEnforceIf(used);
            _model.Add(-off <= range).OnlyEnforceIf(used);
        }
    }

    // A run that holds all places of its woods within one repeat of the pattern: over all repeats its sums average to what those woods sum to.
    private void AddRuns(LinearExpr wander)
    {
        int length = _problem.Input.Pattern.Count;
        for (int start = 0; start < length; start++)
            for (int size = 1; size < length; size++)
            {
                var woods = Enumerable.Range(start, size).Select(k => _problem.PlaceWoods[k % length]).Distinct().ToList();
                if (_problem.PlaceWoods.Take(length).Count(woods.Contains) == size) AddRun(woods, size, wander);
            }
    }

    private void AddRun(List<int> woods, int size, LinearExpr wander)
    {
        int repeats = _problem.Places / _problem.Input.Pattern.Count;
        var sum = LinearExpr.Sum(woods.Select(wood => ExcessOf(0, OfWood(0, wood))));
        AddWithin(_problem.Places * sum - size * repeats * _sum, wander * (repeats * _problem.Grain * _problem.Places));
    }

    private void AddWithin(LinearExpr value, LinearExpr limit)
    {
        _model.Add(value <= limit);
        _model.Add(-1 * value <= limit);
    }

    private LinearExpr PartSum(int part) => ExcessOf(part, Enumerable.Range(0, _problem.Classes.Length));

    private LinearExpr ExcessOf(int part, IEnumerable<int> classes)
    {
        var those = classes.ToList();
        return LinearExpr.WeightedSum(those.Select(c => _counts[part, c]), those.Select(c => _problem.Classes[c].Excess));
    }

    private IEnumerable<int> OfWood(int part, int wood) => Enumerable.Range(0, _problem.Classes.Length).Where(c => _problem.Classes[c].Wood == wood);

    private void Hint(ClassCounts counts)
    {
        for (int part = 0; part < _problem.Parts; part++)
            for (int c = 0; c < _problem.Classes.Length; c++) _model.AddHint(_counts[part, c], counts[part, c]);
    }
}
