// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/people/person.h"

namespace taut::people {

const char* roleWord(Role role) noexcept
{
    switch (role) {
    case Role::Operator: return "operator";
    case Role::Supervisor: return "supervisor";
    case Role::Trainer: return "trainer";
    case Role::Trainee: return "trainee";
    }
    return "";
}

std::optional<Role> roleFrom(std::string_view word) noexcept
{
    for (const Role role : {Role::Operator, Role::Supervisor, Role::Trainer, Role::Trainee})
        if (word == roleWord(role)) return role;
    return std::nullopt;
}

bool may(Role role, Act act) noexcept
{
    switch (act) {
    // A press that looks wrong can be taken out of use by anybody, a trainee included.
    case Act::WithdrawPress: return true;
    case Act::AnswerStep:
    case Act::SignOff:
    case Act::Abandon:
    // Whoever may seal a run may correct it, their own as well: a review by somebody else follows.
    case Act::CorrectRecord: return role != Role::Trainee;
    case Act::AcceptDeviation:
    case Act::WaiveVital:
    case Act::ReturnPress:
    case Act::EditInputs:
    case Act::EditPeople:
    case Act::KeepLogbook:
    case Act::Review:
    case Act::Qualify:
    case Act::VoidRecord: return role == Role::Supervisor;
    case Act::Observe: return role == Role::Trainer || role == Role::Supervisor;
    }
    return false;
}

Finding notAllowed(const Actor& by, std::string subject, Text remedy)
{
    return refuse("gate.role", std::move(subject),
                  {"%1 is enrolled as %2, which does not allow this.", {by.name(), std::string(roleWord(by.role()))}},
                  std::move(remedy));
}

}  // namespace taut::people
