using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The linear system of one step: a small matrix per joint, coupled only by a few rows that run through all joints
/// (the ring must close: three rows). Eliminating the joints leaves a dense system as small as the number of those
/// rows, so a solve costs time proportional to the number of wedges.
/// </summary>
internal sealed class CoupledSystem
{
    private int _joints;
    private int _rows;
    private Symmetric3[] _blocks = [];
    private Vector3D[] _coupling = [];
    private double[] _dense = [];
    private double[] _multipliers = [];
    private (int From, int To, double Yield)[] _span = [];
    private int[] _here = [];

    /// <summary>The matrix of each joint, to be filled before <see cref="Factor"/>.</summary>
    public Span<Symmetric3> Blocks => _blocks.AsSpan(0, _joints);

    /// <summary>The coupling rows' multipliers of the last solve.</summary>
    public ReadOnlySpan<double> Multipliers => _multipliers.AsSpan(0, _rows);

    /// <summary>The coefficients of joint <paramref name="joint"/> in the coupling rows.</summary>
    public Span<Vector3D> Coupling(int joint) => _coupling.AsSpan(joint * _rows, _rows);

    /// <summary>Starts a system of this size with all entries zero.</summary>
    public void Reset(int joints, int rows)
    {
        (_joints, _rows) = (joints, rows);
        if (_blocks.Length < joints) _blocks = new Symmetric3[joints];
        if (_coupling.Length < joints * rows) _coupling = new Vector3D[joints * rows];
        if (_multipliers.Length < rows)
            (_multipliers, _dense, _span, _here) = (new double[rows], new double[rows * rows], new (int, int, double)[rows], new int[rows]);
        for (int r = 0; r < rows; r++) _span[r] = (0, joints, 0);
        _blocks.AsSpan(0, joints).Clear();
        _coupling.AsSpan(0, joints * rows).Clear();
    }

    /// <summary>Tells that a row runs only through the joints from <paramref name="from"/> to before <paramref name="to"/>, and yields by <paramref name="yield"/> per unit of its multiplier.</summary>
    public void SetRow(int row, int from, int to, double yield) => _span[row] = (from, to, yield);

    /// <summary>Factors the system; false when it is not positive definite.</summary>
    public bool Factor()
    {
        Array.Clear(_dense);
        for (int r = 0; r < _rows; r++) _dense[(r * _rows) + r] = _span[r].Yield;
        for (int j = 0; j < _joints; j++)
        {
            if (!_blocks[j].Factor()) return false;
            AddSchur(j);
        }

        return FactorDense();
    }

    /// <summary>
    /// Solves K d + C' y = right and C d - yield y = <paramref name="couplingRight"/>; d replaces <paramref name="right"/>,
    /// y is left in <see cref="Multipliers"/>.
    /// </summary>
    public void Solve(Span<Vector3D> right, ReadOnlySpan<double> couplingRight)
    {
        for (int r = 0; r < _rows; r++) _multipliers[r] = -couplingRight[r];
        for (int j = 0; j < _joints; j++)
        {
            Vector3D d = _blocks[j].Solve(right[j]);
            foreach (int r in Here(j)) _multipliers[r] += _coupling[(j * _rows) + r].Dot(d);
        }

        SolveDense();
        for (int j = 0; j < _joints; j++)
        {
            Vector3D b = right[j];
            foreach (int r in Here(j)) b -= _multipliers[r] * _coupling[(j * _rows) + r];
            right[j] = _blocks[j].Solve(b);
        }
    }

    private void AddSchur(int j)
    {
        ReadOnlySpan<int> here = Here(j);
        for (int r = 0; r < here.Length; r++)
        {
            Vector3D solved = _blocks[j].Solve(_coupling[(j * _rows) + here[r]]);
            for (int s = 0; s <= r; s++) _dense[(here[r] * _rows) + here[s]] += _coupling[(j * _rows) + here[s]].Dot(solved);
        }
    }

    /// <summary>The rows that run through a joint, ascending.</summary>
    private ReadOnlySpan<int> Here(int j)
    {
        int count = 0;
        for (int r = 0; r < _rows; r++)
            if (_span[r].From <= j && j < _span[r].To) _here[count++] = r;
        return _here.AsSpan(0, count);
    }

    private bool FactorDense()
    {
        for (int c = 0; c < _rows; c++)
        {
            double pivot = _dense[(c * _rows) + c];
            for (int k = 0; k < c; k++) pivot -= _dense[(c * _rows) + k] * _dense[(c * _rows) + k];
            if (!(pivot > 0)) return false;
            pivot = Math.Sqrt(pivot);
            _dense[(c * _rows) + c] = pivot;
            for (int r = c + 1; r < _rows; r++)
            {
                double sum = _dense[(r * _rows) + c];
                for (int k = 0; k < c; k++) sum -= _dense[(r * _rows) + k] * _dense[(c * _rows) + k];
                _dense[(r * _rows) + c] = sum / pivot;
            }
        }

        return true;
    }

    private void SolveDense()
    {
        for (int r = 0; r < _rows; r++)
        {
            for (int k = 0; k < r; k++) _multipliers[r] -= _dense[(r * _rows) + k] * _multipliers[k];
            _multipliers[r] /= _dense[(r * _rows) + r];
        }

        for (int r = _rows - 1; r >= 0; r--)
        {
            for (int k = r + 1; k < _rows; k++) _multipliers[r] -= _dense[(k * _rows) + r] * _multipliers[k];
            _multipliers[r] /= _dense[(r * _rows) + r];
        }
    }
}
