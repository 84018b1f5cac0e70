using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>All clearances of the ring with their slacks (kept positive) and contact forces (in units of the band's tension).</summary>
internal sealed class Clearances
{
    private int[] _start = [];
    private JointRow[] _rows = [];
    private double[] _slack = [];
    private double[] _force = [];
    private double[] _slackStep = [];
    private double[] _forceStep = [];
    private double[] _target = [];
    private int _joints;

    /// <summary>Sum of the products of slack and force: how far the iteration is from the answer, mm.</summary>
    public double Complementarity
    {
        get
        {
            double sum = 0;
            for (int r = 0; r < Total; r++) sum += _slack[r] * _force[r];
            return sum;
        }
    }

    /// <summary>Number of clearances.</summary>
    public int Total => _start[_joints];

    /// <summary>Largest difference between a clearance and its slack, mm.</summary>
    public double WorstMismatch
    {
        get
        {
            double worst = 0;
            for (int r = 0; r < Total; r++) worst = Math.Max(worst, Math.Abs(_rows[r].Clearance - _slack[r]));
            return worst;
        }
    }

    /// <summary>Makes room for the ring's clearances.</summary>
    public void Load(RingModel model)
    {
        _joints = model.Count;
        if (_start.Length < _joints + 1) _start = new int[_joints + 1];
        for (int j = 0; j < _joints; j++) _start[j + 1] = _start[j] + JointContacts.Count(model, j);
        if (_rows.Length >= Total) return;
        _rows = new JointRow[Total];
        (_slack, _force, _slackStep, _forceStep, _target) =
            (new double[Total], new double[Total], new double[Total], new double[Total], new double[Total]);
    }

    /// <summary>The clearances of one joint as last evaluated.</summary>
    public ReadOnlySpan<JointRow> Of(int joint) => _rows.AsSpan(_start[joint].._start[joint + 1]);

    /// <summary>Evaluates all clearances at the given states.</summary>
    public void Evaluate(RingModel model, ReadOnlySpan<JointState> states)
    {
        for (int j = 0; j < _joints; j++) JointContacts.Evaluate(model, j, states[j], _rows.AsSpan(_start[j].._start[j + 1]));
    }

    /// <summary>Sets the slacks to the (positive) clearances and the forces to an even share of the band's tension.</summary>
    public void Begin()
    {
        for (int j = 0; j < _joints; j++)
        {
            for (int r = _start[j]; r < _start[j + 1]; r++)
                (_slack[r], _force[r]) = (_rows[r].Clearance, 1.0 / (_start[j + 1] - _start[j]));
        }
    }

    /// <summary>Adds the contact forces to the joints' gradients and the stiffness of the contacts to their matrices.</summary>
    public void AddContacts(Span<Vector3D> gradient, Span<Symmetric3> matrices)
    {
        for (int j = 0; j < _joints; j++)
        {
            for (int r = _start[j]; r < _start[j + 1]; r++)
            {
                gradient[j] -= _force[r] * _rows[r].Gradient;
                matrices[j].AddOuter(_force[r] / _slack[r], _rows[r].Gradient);
            }
        }
    }

    /// <summary>Asks for slack times force to become <paramref name="centre"/>, less the product of the last steps when <paramref name="corrected"/>.</summary>
    public void Aim(double centre, bool corrected)
    {
        for (int r = 0; r < Total; r++)
            _target[r] = centre - (corrected ? _slackStep[r] * _forceStep[r] : 0) - (_slack[r] * _force[r]);
    }

    /// <summary>Adds what the aim and the mismatch contribute to the right-hand sides.</summary>
    public void AddRight(Span<Vector3D> right)
    {
        for (int j = 0; j < _joints; j++)
        {
            for (int r = _start[j]; r < _start[j + 1]; r++)
            {
                double mismatch = _rows[r].Clearance - _slack[r];
                right[j] += ((_target[r] - (_force[r] * mismatch)) / _slack[r]) * _rows[r].Gradient;
            }
        }
    }

    /// <summary>From the change of the joints, the steps of slacks and forces.</summary>
    public void Step(ReadOnlySpan<Vector3D> change)
    {
        for (int j = 0; j < _joints; j++)
        {
            for (int r = _start[j]; r < _start[j + 1]; r++)
            {
                _slackStep[r] = _rows[r].Gradient.Dot(change[j]) + _rows[r].Clearance - _slack[r];
                _forceStep[r] = (_target[r] - (_force[r] * _slackStep[r])) / _slack[r];
            }
        }
    }

    /// <summary>
    /// Largest fractions of the steps, at most 1, that use up no more than <paramref name="share"/> of any slack or force.
    /// </summary>
    public (double Slack, double Force) Longest(double share)
    {
        double slack = 1;
        double force = 1;
        for (int r = 0; r < Total; r++)
        {
            if (slack * _slackStep[r] < -share * _slack[r]) slack = -share * _slack[r] / _slackStep[r];
            if (force * _forceStep[r] < -share * _force[r]) force = -share * _force[r] / _forceStep[r];
        }

        return (slack, force);
    }

    /// <summary>Sum of the products after the given fractions of the steps.</summary>
    public double ComplementarityAfter(double slackPart, double forcePart)
    {
        double sum = 0;
        for (int r = 0; r < Total; r++)
            sum += (_slack[r] + (slackPart * _slackStep[r])) * (_force[r] + (forcePart * _forceStep[r]));
        return sum;
    }

    /// <summary>Takes the given fractions of the steps.</summary>
    public void Move(double slackPart, double forcePart)
    {
        for (int r = 0; r < Total; r++)
        {
            _slack[r] += slackPart * _slackStep[r];
            _force[r] += forcePart * _forceStep[r];
        }
    }
}
