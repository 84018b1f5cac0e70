using Google.OrTools.Sat;
using Ringwright.Core.Boards;

namespace Ringwright.Stock.Boards;

/// <summary>
/// The layout of one wood as an integer programme (CP-SAT): how many strips of each class a stretch gives, how many pieces come from
/// them. Strips of a class with one demand are all alike and are counted; where demands share strips, each strip is its own.
/// </summary>
internal sealed class RackModel
{
    // Parts of a mm in which lengths are counted; what pieces take is rounded up.
    private const double Parts = 10_000;

    private sealed record Strips(int Stretch, int Class, LinearExpr Count, IntVar[] Variables, IntVar[] Pieces, BoolVar[] Begun);

    private readonly RackSpace _space;
    private readonly CpModel _model = new();
    private readonly List<Strips> _strips = [];
    private readonly Dictionary<int, (IntVar Short, IntVar Missing)> _short = [];
    private readonly Dictionary<(string Ring, string Family), BoolVar> _from = [];
    private readonly LinearExpr _shortSum;
    private readonly LinearExpr _colours;
    private readonly LinearExpr _cost;
    private readonly double _costUnit;

    public RackModel(RackSpace space)
    {
        _space = space;
        NeededWeighs = 1 + space.Classes.SelectMany(c => c.Demands).Sum(d => (long)space.Demand(d).ToSaw);
        for (int s = 0; s < space.Stretches.Length; s++) AddStretch(s);
        foreach (int d in space.Classes.SelectMany(c => c.Demands)) AddDemand(d);
        _shortSum = LinearExpr.WeightedSum(_short.Values.SelectMany(v => new[] { v.Short, v.Missing }), _short.Values.SelectMany(_ => new[] { 1L, NeededWeighs }));
        AddColours();
        _colours = LinearExpr.Sum(_from.Values);
        // Coarse enough that sums stay small, fine enough that rounding is lost in the kerf.
        _costUnit = space.Stretches.Select(s => s.Weight).DefaultIfEmpty(1).Max() / 10;
        _cost = Cost();
    }

    /// <summary>How much more a needed piece weighs than a spare.</summary>
    public long NeededWeighs { get; }

    public enum Stage
    {
        Short,
        Colours,
        Wood,
    }

    /// <summary>The layout found, the bound proved, and whether the layout is proved to be the best.</summary>
    public sealed record Outcome(RackLayout? Layout, double Bound, bool IsBest);

    /// <summary>Minimises one thing.</summary>
    public Outcome Minimise(Stage stage, RackLayout hint, SearchLimit limit, CancellationToken cancel)
    {
        _model.ClearHints();
        Hint(hint);
        _model.Minimize(stage switch { Stage.Short => _shortSum, Stage.Colours => _colours, _ => _cost });
        var solver = new CpSolver { StringParameters = limit.Parameters };
        CpSolverStatus status;
        using (cancel.Register(solver.StopSearch)) status = solver.Solve(_model);
        cancel.ThrowIfCancellationRequested();
        if (status == CpSolverStatus.ModelInvalid) throw new InvalidOperationException($"The solver refuses the model: {_model.Validate()}");
        bool found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        double bound = Math.Ceiling(solver.BestObjectiveBound - 1e-6);
        return new(found ? Read(solver) : null, stage == Stage.Wood ? bound * _costUnit : bound, status == CpSolverStatus.Optimal);
    }

    /// <summary>From now on no more may be short than this.</summary>
    public void HoldShort(long most) => _model.Add(_shortSum <= most);

    /// <summary>From now on no more boards may be used than this.</summary>
    public void HoldColours(long most) => _model.Add(_colours <= most);

    private static long Up(double mm) => (long)Math.Ceiling((mm * Parts) - 1e-3);

    private static long Down(double mm) => (long)Math.Floor((mm * Parts) + 1e-3);

    private void AddStretch(int s)
    {
        Stretch stretch = _space.Stretches[s];
        List<LinearExpr> across = [];
        for (int c = 0; c < _space.Classes.Length; c++)
        {
            StripClass strips = _space.Classes[c];
            int most = Math.Min(_space.StripsAcross(stretch, strips), strips.Demands.Sum(d => StripsNeeded(d, stretch)));
            if (most == 0) continue;
            LinearExpr count = strips.Demands.Length == 1 ? AddAlike(s, c, most) : AddEach(s, c, most);
            across.Add(count * Up(strips.Width + _space.Rules.Kerf));
        }

        if (across.Count > 0) _model.Add(LinearExpr.Sum(across) <= Down(stretch.Across));
    }

    private int StripsNeeded(int d, Stretch stretch)
    {
        int each = _space.Demand(d).CountIn(_space.Room(stretch));
        return each == 0 ? 0 : (_space.Demand(d).ToSaw + each - 1) / each;
    }

    private IntVar AddAlike(int s, int c, int most)
    {
        int d = _space.Classes[c].Demands[0], each = _space.Demand(d).CountIn(_space.Room(_space.Stretches[s]));
        IntVar count = _model.NewIntVar(0, most, $"m{s}_{c}"), pieces = _model.NewIntVar(0, Math.Min(_space.Demand(d).ToSaw, (long)most * each), $"n{s}_{d}");
        _model.Add(pieces <= each * count);
        _model.Add(pieces >= count);
        _strips.Add(new(s, c, count, [count], [pieces], []));
        return count;
    }

    private LinearExpr AddEach(int s, int c, int most)
    {
        int[] demands = _space.Classes[c].Demands;
        double room = _space.Room(_space.Stretches[s]);
        List<LinearExpr> counts = [];
        LinearExpr? before = null;
        for (int j = 0; j < most; j++)
        {
            BoolVar ripped = _model.NewBoolVar($"b{s}_{c}_{j}");
            BoolVar[] begun = [.. demands.Select(d => _model.NewBoolVar($"u{s}_{j}_{d}"))];
            IntVar[] pieces = [.. demands.Select((d, i) => _model.NewIntVar(0, Math.Min(_space.Demand(d).ToSaw, _space.Demand(d).CountIn(room)), $"n{s}_{j}_{d}"))];
            for (int i = 0; i < demands.Length; i++)
            {
                _model.Add(pieces[i] <= _space.Demand(demands[i]).CountIn(room) * begun[i]);
                _model.Add(pieces[i] >= begun[i]);
            }

            LinearExpr used = LinearExpr.WeightedSum(pieces, demands.Select(d => Up(_space.Demand(d).Pitch)))
                + LinearExpr.WeightedSum(begun, demands.Select(d => Up(_space.Demand(d).Start)));
            _model.Add(used <= Down(room) * ripped);
            if (before is not null) _model.Add(used <= before);
            before = used;
            _strips.Add(new(s, c, ripped, [ripped], pieces, begun));
            counts.Add(ripped);
        }

        return LinearExpr.Sum(counts);
    }

    private void AddDemand(int d)
    {
        StripDemand demand = _space.Demand(d);
        IntVar wanting = _model.NewIntVar(0, demand.ToSaw, $"s{d}"), missing = _model.NewIntVar(0, demand.Needed, $"k{d}");
        _model.Add(LinearExpr.Sum(PiecesOf(d).Select(p => p.Pieces)) + wanting == demand.ToSaw);
        _model.Add(missing >= wanting - (demand.ToSaw - demand.Needed));
        _short.Add(d, (wanting, missing));
    }

    private IEnumerable<(int Stretch, IntVar Pieces)> PiecesOf(int d) =>
        from s in _strips
        let at = Array.IndexOf(_space.Classes[s.Class].Demands, d)
        where at >= 0
        select (s.Stretch, s.Pieces[at]);

    private void AddColours()
    {
        foreach (int d in _short.Keys)
            foreach (var family in PiecesOf(d).GroupBy(p => _space.Stretches[p.Stretch].Family))
            {
                (string, string) key = (_space.Demand(d).Ring, family.Key);
                if (!_from.TryGetValue(key, out BoolVar? from)) _from.Add(key, from = _model.NewBoolVar($"y{_from.Count}"));
                _model.Add(LinearExpr.Sum(family.Select(p => p.Pieces)) <= _space.Demand(d).ToSaw * from);
            }
    }

    private LinearExpr Cost()
    {
        List<LinearExpr> parts = [];
        foreach (Strips s in _strips)
        {
            Stretch stretch = _space.Stretches[s.Stretch];
            StripClass strips = _space.Classes[s.Class];
            double face = (strips.Width + _space.Rules.Kerf) * stretch.Weight / _costUnit;
            long Whole(double mm) => (long)Math.Floor(face * mm);
            double fixedLength = (RackLayout.RestCounts * stretch.Length) + ((1 - RackLayout.RestCounts) * _space.Rules.StripLoss);
            double Once(int i) => (1 - RackLayout.RestCounts) * _space.Demand(strips.Demands[i]).Start;
            // A class of one demand begins it on every strip.
            parts.Add(s.Count * Whole(fixedLength + (s.Begun.Length == 0 ? Once(0) : 0)));
            for (int i = 0; i < s.Pieces.Length; i++) parts.Add(s.Pieces[i] * Whole((1 - RackLayout.RestCounts) * _space.Demand(strips.Demands[i]).Pitch));
            for (int i = 0; i < s.Begun.Length; i++) parts.Add(s.Begun[i] * Whole(Once(i)));
        }

        return LinearExpr.Sum(parts);
    }

    private void Hint(RackLayout layout)
    {
        foreach (var group in _strips.GroupBy(s => (s.Stretch, s.Class)))
        {
            LaidStrip[] laid = [.. layout.Strips[group.Key.Stretch].Where(t => t.Class == group.Key.Class).OrderByDescending(layout.Used)];
            Strips[] own = [.. group];
            if (own[0].Begun.Length == 0)
            {
                _model.AddHint(own[0].Variables[0], laid.Length);
                _model.AddHint(own[0].Pieces[0], laid.Sum(t => t.Pieces.Values.Sum()));
                continue;
            }

            int[] demands = _space.Classes[group.Key.Class].Demands;
            for (int j = 0; j < own.Length; j++)
            {
                _model.AddHint(own[j].Variables[0], j < laid.Length ? 1 : 0);
                for (int i = 0; i < demands.Length; i++)
                {
                    int count = j < laid.Length ? laid[j].Pieces.GetValueOrDefault(demands[i]) : 0;
                    _model.AddHint(own[j].Pieces[i], count);
                    _model.AddHint(own[j].Begun[i], count > 0 ? 1 : 0);
                }
            }
        }

        foreach ((int d, (IntVar wanting, IntVar missing)) in _short)
        {
            int given = layout.Given(d);
            _model.AddHint(wanting, _space.Demand(d).ToSaw - given);
            _model.AddHint(missing, Math.Max(0, _space.Demand(d).Needed - given));
        }
    }

    private RackLayout Read(CpSolver solver)
    {
        var layout = new RackLayout(_space);
        foreach (Strips s in _strips)
        {
            int[] demands = _space.Classes[s.Class].Demands;
            int left = s.Begun.Length == 0 ? (int)solver.Value(s.Pieces[0]) : 0;
            int each = s.Begun.Length == 0 ? _space.Demand(demands[0]).CountIn(_space.Room(_space.Stretches[s.Stretch])) : 0;
            for (long n = solver.Value(s.Variables[0]); n > 0; n--)
            {
                var strip = new LaidStrip(s.Class);
                if (s.Begun.Length == 0)
                {
                    int count = Math.Min(each, left);
                    if (count > 0) strip.Pieces.Add(demands[0], count);
                    left -= count;
                }
                else
                {
                    for (int i = 0; i < demands.Length; i++)
                        if (solver.Value(s.Pieces[i]) > 0) strip.Pieces.Add(demands[i], (int)solver.Value(s.Pieces[i]));
                }

                if (strip.Pieces.Count > 0) layout.Strips[s.Stretch].Add(strip);
            }
        }

        return layout;
    }
}
