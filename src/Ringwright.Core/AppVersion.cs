using System.Reflection;

namespace Ringwright.Core;

/// <summary>Which Ringwright this is.</summary>
public static class AppVersion
{
    /// <summary>The version as people write it, such as 0.1.0; without the build's mark.</summary>
    public static string Text { get; } = typeof(AppVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];
}
