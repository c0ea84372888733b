#pragma once

#include <cstdlib>
#include <initializer_list>

/// What the mutated copies of the gate call: each does what the source says, unless the one mutant
/// that was chosen for this run is asked for. Mutant schemata: R. H. Untch, A. J. Offutt,
/// M. J. Harrold, "Mutation analysis using mutant schemata", ISSTA 1993.
namespace lidlark::mutation {

/// Number of the mutant that runs, from the environment (LIDLARK_MUTANT); 0: none, the gate itself.
inline int chosen()
{
    static const int number = [] {
        const char *text = std::getenv("LIDLARK_MUTANT");
        return text ? std::atoi(text) : 0;
    }();
    return number;
}

inline bool is(int mutant)
{
    return mutant == chosen();
}

/// Nothing (a null pointer, say) in place of what a condition declares.
template <class Value> Value orNothing(int mutant, Value value)
{
    return is(mutant) ? Value{} : value;
}

/// A tag that nothing carries in place of the one the source names.
template <class Tag> Tag untagged(int mutant, Tag tag)
{
    return is(mutant) ? static_cast<Tag>(31) : tag;
}

/// A value for which there is no label, where @p value is the one whose label is left out.
template <class Value> Value unlabelled(int mutant, Value label, Value value)
{
    return is(mutant) && value == label ? static_cast<Value>(31) : value;
}

/// The code after the one the source names.
template <class Code> Code nextCode(int mutant, Code code)
{
    return is(mutant) ? static_cast<Code>(static_cast<int>(code) + 1) : code;
}

inline bool flipped(int mutant, bool value)
{
    return is(mutant) != value;
}

/// One of the two other values of an enumeration of three.
template <class Value> Value other(int next, int nextButOne, Value value)
{
    const int step = is(next) ? 1 : is(nextButOne) ? 2 : 0;
    return static_cast<Value>((static_cast<int>(value) + step) % 3);
}

/// A rule that finds nothing in place of the one named.
template <class... Given> auto skipped(int mutant, void (*rule)(Given...)) -> void (*)(Given...)
{
    return is(mutant) ? [](Given...) {} : rule;
}

/// `a & b`, or one of the two alone.
template <class Set> Set both(int onlySecond, int onlyFirst, const Set &a, const Set &b)
{
    return is(onlySecond) ? b : is(onlyFirst) ? a : a & b;
}

/// `a < b`, or `a <= b`.
template <class A, class B> bool below(int mutant, const A &a, const B &b)
{
    return is(mutant) ? a <= b : a < b;
}

/// `a <= b`, or `a < b`.
template <class A, class B> bool atMost(int mutant, const A &a, const B &b)
{
    return is(mutant) ? a < b : a <= b;
}

/// `a > b`, or `a >= b`.
template <class A, class B> bool above(int mutant, const A &a, const B &b)
{
    return is(mutant) ? a >= b : a > b;
}

/// `a >= b`, or `a > b`.
template <class A, class B> bool atLeast(int mutant, const A &a, const B &b)
{
    return is(mutant) ? a > b : a >= b;
}

/// `a == b`, or `a != b`.
template <class A, class B> bool same(int mutant, const A &a, const B &b)
{
    return is(mutant) ? a != b : a == b;
}

/// `a != b`, or `a == b`.
template <class A, class B> bool differs(int mutant, const A &a, const B &b)
{
    return is(mutant) ? a == b : a != b;
}

} // namespace lidlark::mutation
