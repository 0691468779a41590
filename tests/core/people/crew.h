// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>

#include <memory>
#include <string>

#include "core/people/person.h"

// People of the tests: enrolled, signed in, and able to sign. Each has PIN 4821.
namespace taut::people::test {

inline const Chosen kChosen{"4821", "four grey herons wait"};

struct Member {
    Enrolled enrolled;
    Actor actor;
    std::shared_ptr<const Signer> signer;
};

inline Member member(const std::string& id, const std::string& name, Role role)
{
    auto enrolled = makePerson({id}, name, role, kChosen, PinCost::Least);
    REQUIRE(enrolled);
    auto actor = signIn(&*enrolled, kChosen.pin);
    REQUIRE(actor);
    auto signer = unlock(&*enrolled, kChosen.passphrase);
    REQUIRE(signer);
    return {*std::move(enrolled), *std::move(actor), std::make_shared<const Signer>(*std::move(signer))};
}

}  // namespace taut::people::test
