using Google.OrTools.LinearSolver;

namespace Ringwright.Stock.Boards;

/// <summary>The linear relaxation over the patterns known so far (GLOP): least cost that covers the counts wanted, in fractions of sticks.</summary>
internal sealed class LinearMaster : IDisposable
{
    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly List<Variable> _sticks = [];
    private readonly Constraint[] _wanted;
    private readonly Objective _objective;

    public LinearMaster(int kinds)
    {
        _wanted = [.. Enumerable.Range(0, kinds).Select(i => _solver.MakeConstraint(0, double.PositiveInfinity, $"w{i}"))];
        _objective = _solver.Objective();
        // Without preprocessing the solver goes on from where it stood before the new patterns.
        if (!_solver.SetSolverSpecificParametersAsString("use_preprocessing:false")) throw new InvalidOperationException("GLOP does not know its parameter.");
        _objective.SetMinimization();
    }

    /// <summary>How many patterns it knows.</summary>
    public int Count => _sticks.Count;

    /// <summary>From now on these counts are to be covered; the solver goes on from where it stood.</summary>
    public void Want(int[] wanted)
    {
        for (int i = 0; i < wanted.Length; i++) _wanted[i].SetLb(wanted[i]);
    }

    public void Add(Pattern pattern, long cost)
    {
        Variable sticks = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _objective.SetCoefficient(sticks, cost);
        for (int i = 0; i < _wanted.Length; i++)
            if (pattern.Counts[i] > 0) _wanted[i].SetCoefficient(sticks, pattern.Counts[i]);
        _sticks.Add(sticks);
    }

    /// <summary>Solves it and gives what one more piece of each kind is worth; null when the solver fails.</summary>
    public double[]? Solve() =>
        _solver.Solve() is Solver.ResultStatus.OPTIMAL ? [.. _wanted.Select(w => Math.Max(0, w.DualValue()))] : null;

    public double Cost => _objective.Value();

    public double Sticks(int pattern) => _sticks[pattern].SolutionValue();

    public void Dispose() => _solver.Dispose();
}
