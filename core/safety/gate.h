#pragma once

#include "core/safety/admit.h"
#include "core/safety/facts.h"
#include "core/safety/form.h"

namespace lidlark::safety {

/// One situation, judged for as many activities as asked. The only maker of `Admitted`.
class Gate
{
public:
    explicit Gate(const Situation &situation) : m_facts(situation) {}

    [[nodiscard]] Admission judge(const catalogue::Activity &activity) const;

private:
    [[nodiscard]] Refusal reasonsAgainst(const Form &form) const;
    [[nodiscard]] Admitted admitted(const Form &form) const;

    Facts m_facts;
};

} // namespace lidlark::safety
