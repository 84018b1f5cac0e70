using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Ringwright.Architecture.Tests;

/// <summary>What a compiled assembly refers to outside itself, from its own tables.</summary>
internal sealed class AssemblyReading
{
    private AssemblyReading(MetadataReader reader)
    {
        Assemblies = [.. reader.AssemblyReferences.Select(h => reader.GetString(reader.GetAssemblyReference(h).Name))];
        Types = [.. reader.TypeReferences.Select(h => NameOf(reader, h))];
        Members = [.. reader.MemberReferences.Select(h => reader.GetMemberReference(h)).Where(m => m.Parent.Kind == HandleKind.TypeReference)
            .Select(m => $"{NameOf(reader, (TypeReferenceHandle)m.Parent)}.{reader.GetString(m.Name)}")];
    }

    /// <summary>Names of the assemblies it refers to.</summary>
    public IReadOnlyList<string> Assemblies { get; }

    /// <summary>Full names of the types it refers to.</summary>
    public IReadOnlyList<string> Types { get; }

    /// <summary>Full names of the methods and fields it refers to; those of generic types are left out.</summary>
    public IReadOnlyList<string> Members { get; }

    public static AssemblyReading Of(string path)
    {
        using FileStream file = File.OpenRead(path);
        using var image = new PEReader(file);
        return new(image.GetMetadataReader());
    }

    private static string NameOf(MetadataReader reader, TypeReferenceHandle handle)
    {
        TypeReference type = reader.GetTypeReference(handle);
        string name = reader.GetString(type.Name);
        if (type.ResolutionScope.Kind == HandleKind.TypeReference) return $"{NameOf(reader, (TypeReferenceHandle)type.ResolutionScope)}.{name}";
        string space = reader.GetString(type.Namespace);
        return space.Length > 0 ? $"{space}.{name}" : name;
    }
}
