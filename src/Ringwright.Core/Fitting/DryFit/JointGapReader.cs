namespace Ringwright.Core.Fitting;

/// <summary>Reads a joint's openings off its state.</summary>
internal static class JointGapReader
{
    /// <summary>The joint's openings, mm.</summary>
    public static JointGap Read(RingModel model, int joint, JointState state)
    {
        (double rimBottom, double tipBottom) = JointContacts.Opening(model, joint, state, top: false);
        (double rimTop, double tipTop) = model.IsUpright(joint) ? (rimBottom, tipBottom) : JointContacts.Opening(model, joint, state, top: true);
        return new(rimBottom, rimTop, tipBottom, tipTop, state.Along);
    }
}
