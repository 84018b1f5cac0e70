namespace Ringwright.Web.Viewing;

/// <summary>How fine the mesh is that a browser gets.</summary>
internal enum ViewerDetail
{
    /// <summary>For the first look at a big piece.</summary>
    Coarse,

    /// <summary>Round to the eye.</summary>
    Fine,
}
