using System.Reflection;

namespace Ringwright.Architecture.Tests;

/// <summary>The name a member has in the compiler's documentation file (ECMA-334, annex D: ID strings).</summary>
internal static class DocumentName
{
    public static string Of(MemberInfo member) => member switch
    {
        Type type => "T:" + Named(type),
        PropertyInfo property => $"P:{Named(property.DeclaringType!)}.{property.Name}{Parameters(property.GetIndexParameters())}",
        FieldInfo field => $"F:{Named(field.DeclaringType!)}.{field.Name}",
        MethodInfo method => $"M:{Named(method.DeclaringType!)}.{method.Name}{(method.IsGenericMethod ? $"``{method.GetGenericArguments().Length}" : "")}{Parameters(method.GetParameters())}{(method.Name is "op_Implicit" or "op_Explicit" ? "~" + Argument(method.ReturnType) : "")}",
        _ => throw new ArgumentException($"{member} has no such name here.", nameof(member)),
    };

    private static string Named(Type type) => type.FullName!.Replace('+', '.');

    private static string Parameters(ParameterInfo[] parameters) => parameters.Length == 0 ? "" : $"({string.Join(",", parameters.Select(p => Argument(p.ParameterType)))})";

    private static string Argument(Type type)
    {
        if (type.IsByRef) return Argument(type.GetElementType()!) + "@";
        if (type.IsArray) return Argument(type.GetElementType()!) + (type.GetArrayRank() == 1 ? "[]" : $"[{string.Join(",", Enumerable.Repeat("0:", type.GetArrayRank()))}]");
        if (type.IsGenericParameter) return (type.DeclaringMethod is null ? "`" : "``") + type.GenericParameterPosition;
        if (!type.IsGenericType) return Named(type);
        string name = type.GetGenericTypeDefinition().FullName!.Replace('+', '.');
        return $"{name[..name.IndexOf('`', StringComparison.Ordinal)]}{{{string.Join(",", type.GetGenericArguments().Select(Argument))}}}";
    }
}
