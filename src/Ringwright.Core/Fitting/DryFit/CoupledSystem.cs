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
    private int[] _hereStarts = [];

    /// <summary>The matrix of each joint, to be filled before <see cref="Factor"/>.</summary>
    public Span<Symmetric3> Blocks => _blocks.AsSpan(0, _joints);

    /// <summary>The coupling rows' multipliers of the last solve.</summary>
    public ReadOnlySpan<double> Multipliers => _multipliers.AsSpan(0, _rows);

    /// <summary>The coefficients of joint <paramref name="joint"/> in the coupling rows; those of every row that runs through it are to be set anew.</summary>
    public Span<Vector3D> Coupling(int joint) => _coupling.AsSpan(joint * _rows, _rows);

    /// <summary>Starts a system of this size with all blocks zero.</summary>
    public void Reset(int joints, int rows)
    {
        (_joints, _rows) = (joints, rows);
        if (_blocks.Length < joints) (_blocks, _hereStarts) = (new Symmetric3[joints], new int[joints + 1]);
        if (_coupling.Length < joints * rows) _coupling = new Vector3D[joints * rows];
        if (_multipliers.Length < rows)
            (_multipliers, _dense, _span) = (new double[rows], new double[rows * rows], new (int, int, double)[rows]);
        for (int r = 0; r < rows; r++) _span[r] = (0, joints, 0);
        _blocks.AsSpan(0, joints).Clear();
    }

    /// <summary>Tells that a row runs only through the joints from <paramref name="from"/> to before <paramref name="to"/>, and yields by <paramref name="yield"/> per unit of its multiplier.</summary>
    public void SetRow(int row, int from, int to, double yield) => _span[row] = (from, to, yield);

    /// <summary>Factors the system; false when it is not positive definite.</summary>
    public bool Factor()
    {
        NoteRows();
        _dense.AsSpan(0, _rows * _rows).Clear();
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

    private void NoteRows()
    {
        int most = 0;
        for (int r = 0; r < _rows; r++) most += _span[r].To - _span[r].From;
        if (_here.Length < most) _here = new int[2 * most];
        int count = 0;
        for (int j = 0; j < _joints; j++)
        {
            _hereStarts[j] = count;
            for (int r = 0; r < _rows; r++)
                if (_span[r].From <= j && j < _span[r].To) _here[count++] = r;
        }

        _hereStarts[_joints] = count;
    }

    /// <summary>The rows that run through a joint, ascending.</summary>
    private ReadOnlySpan<int> Here(int j) => _here.AsSpan(_hereStarts[j].._hereStarts[j + 1]);

    // Cholesky's factors row by row, so that all sums run along rows.
    private bool FactorDense()
    {
        for (int r = 0; r < _rows; r++)
        {
            Span<double> row = _dense.AsSpan(r * _rows, r + 1);
            for (int c = 0; c < r; c++)
            {
                ReadOnlySpan<double> above = _dense.AsSpan(c * _rows, c + 1);
                row[c] = (row[c] - Lanes.Dot(row[..c], above[..c])) / above[c];
            }

            double pivot = row[r] - Lanes.Dot(row[..r], row[..r]);
            if (!(pivot > 0)) return false;
            row[r] = Math.Sqrt(pivot);
        }

        return true;
    }

    private void SolveDense()
    {
        Span<double> y = _multipliers.AsSpan(0, _rows);
        for (int r = 0; r < _rows; r++)
        {
            ReadOnlySpan<double> row = _dense.AsSpan(r * _rows, r + 1);
            y[r] = (y[r] - Lanes.Dot(row[..r], y[..r])) / row[r];
        }

        for (int r = _rows - 1; r >= 0; r--)
        {
            ReadOnlySpan<double> row = _dense.AsSpan(r * _rows, r + 1);
            y[r] /= row[r];
            Lanes.Subtract(y[..r], y[r], row[..r]);
        }
    }
}
