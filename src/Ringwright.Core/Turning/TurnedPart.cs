namespace Ringwright.Core.Turning;

/// <summary>Where one segment lies in the buffers of a <see cref="TurnedMesh"/>.</summary>
/// <param name="Ring">Index of its ring, from the bottom.</param>
/// <param name="Segment">Its index in the ring.</param>
/// <param name="Wood">Number of its wood.</param>
/// <param name="FirstVertex">Its first vertex.</param>
/// <param name="VertexCount">How many vertices it has.</param>
/// <param name="FirstIndex">Its first index.</param>
/// <param name="IndexCount">How many indices it has, three for each triangle.</param>
public readonly record struct TurnedPart(int Ring, int Segment, int Wood, int FirstVertex, int VertexCount, int FirstIndex, int IndexCount);

/// <summary>A run of the buffers that is all of one wood: one draw call.</summary>
/// <param name="Wood">Number of the wood.</param>
/// <param name="FirstPart">Its first part.</param>
/// <param name="PartCount">How many parts it has.</param>
/// <param name="FirstIndex">Its first index.</param>
/// <param name="IndexCount">How many indices it has.</param>
public readonly record struct WoodRange(int Wood, int FirstPart, int PartCount, int FirstIndex, int IndexCount);
