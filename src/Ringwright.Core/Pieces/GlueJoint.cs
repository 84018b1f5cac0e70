using System.Text.Json;
using System.Text.Json.Serialization;

namespace Ringwright.Core.Pieces;

/// <summary>What the glued joints of these hands hold. Starting values to be replaced by tests of one's own.</summary>
public sealed record GlueJoint
{
    /// <summary>
    /// Tension a joint between two segments holds, MPa. The faces are nearly end grain: careful end-grain joints reach at most a
    /// quarter of the wood's strength along the grain, some 25 MPa (Wood Handbook FPL-GTR-190, chapter 10, from memory); ordinary
    /// ones less. The starting value is a rough guess.
    /// </summary>
    public double Tension { get; init; } = 10;

    /// <summary>
    /// Share of the stress from slow changes of moisture that stays: wood creeps while it dries and swells. Rough guess; 1 makes
    /// the wood purely elastic.
    /// </summary>
    public double StressKept { get; init; } = 0.5;

    /// <summary>
    /// How many times stronger a joint must be than the pull of rotation. 10 is what flywheel rims are given (Machinery's
    /// Handbook, from memory).
    /// </summary>
    public double SpeedSafety { get; init; } = 10;

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
